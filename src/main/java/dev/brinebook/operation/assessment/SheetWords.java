// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.text.Localizable;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/** Headings and other fixed words of the sheet. */
enum SheetWords implements Localizable {
    TITLE,
    FOR_CUSTOMER,
    FOR_INSTALLER,
    HOUSEHOLD,
    DATE,
    PREPARED_BY,
    INSTALLER,
    SIGNATURE,
    THE_WATER,
    WHAT,
    VALUE,
    FITS,
    DOES_NOT_FIT,
    LADDER,
    HARD_DAYS,
    SALT_A_YEAR,
    COST_A_YEAR,
    COST_NOW,
    SAVED_OVER_BELOW,
    WHAT_IS_WRONG,
    SET_NOW,
    SET_INSTEAD,
    WHY,
    NOTHING_WRONG,
    QUESTIONS,
    CAUTIONS,
    OTHER_CAUTIONS,
    PLAIN_CAUTION,
    SETTINGS,
    SETTINGS_IF_CONVERTED,
    SETTING,
    REASON,
    STEPS,
    STEP,
    MINUTES,
    FLOW,
    WATER,
    TO_DRAIN,
    BEFORE,
    AFTER,
    READINGS,
    READING,
    BEFORE_WORK,
    AFTER_WORK,
    RAW_HARDNESS,
    RAW_IRON,
    SOFT_HARDNESS,
    METER,
    PRESSURE,
    DRAIN_FLOW,
    REFILL_TIME,
    STOP,
    WARNING,
    INFO,
    MET,
    NOT_MET,
    CHECK_ON_SITE;

    private static final Map<String, SheetWords> BY_NAME = byName();

    /** All of them, by the names that the template asks for. */
    static Map<String, SheetWords> all() {
        return BY_NAME;
    }

    /** The word for a constant of the same name. */
    static SheetWords of(Enum<?> constant) {
        return BY_NAME.get(constant.name());
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
