// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.text.Localizable;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/** Headings and other fixed words of the sheets. */
enum SheetWords implements Localizable {
    // of every sheet
    NAME, ADDRESS, TESTED_ON, SEEN_ON, WRITTEN_BY, PHONE, SIGNATURE,
    // of the letter
    LETTER_TITLE, FOUND, SUGGESTED, IN_A_YEAR, HARD_DAYS, WATER_USED, COST, WOULD_CHANGE, PLEASE_KNOW,
    MEASURED, ASSUMED, ESTIMATE, HARDNESS, IRON, PEOPLE, WATER_A_DAY, SALT_EACH, SALT_PRICE, WATER_PRICE, NONE, USUAL,
    // of the card
    CARD_TITLE, RESIN, SETTING, SET, NOW, DONE, REASON, TIME_NOW, CHECK, SHOULD_BE, BAND, READ, INITIALS, STOP_OPEN, STOP_SALT,
    SEE_CHECKLIST, TREAT_BEFORE_SETTING, NOTHING_TO_SET, LEAVE_OTHERS, BRINE_MINUTES, REFILL_WATER,
    // of the checklist
    CHECKLIST_TITLE, BUYING, ON_THE_DAY, STEPS, STEP, MINUTES, FLOW, WATER, TO_DRAIN, FIRST_DAY, FIRST_WEEK, FIRST_MONTH, FIRST_DAY_SOFT,
    FIRST_DAY_LEAKS, FIRST_WEEK_SALT, FIRST_MONTH_METER, READINGS, READING, BEFORE_WORK, AFTER_WORK, RAW_HARDNESS, RAW_IRON, SOFT_HARDNESS,
    METER, PRESSURE, DRAIN_FLOW, REFILL_TIME, REASONS, CAUTIONS;

    private static final Map<String, SheetWords> BY_NAME = byName();

    /** All of them, by the names that the templates ask for. */
    static Map<String, SheetWords> all() {
        return BY_NAME;
    }

    private static Map<String, SheetWords> byName() {
        Map<String, SheetWords> all = new TreeMap<>();
        Arrays.stream(values()).forEach(word -> all.put(word.name(), word));
        return all;
    }

    @Override
    public String textId() {
        return Localizable.idOf("sheetWords", this);
    }
}
