// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.sheet;

import dev.brinebook.text.Localizable;
import java.util.Arrays;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/** Headings of the sheets of plans; some are those of other sheets. */
public enum PlanWords implements Localizable {
    COMMISSIONING_TITLE, DONE, SETTING, SET, STAGES, CHECK, BAND, READ, INITIALS, LATER, UPKEEP_TITLE, TASK, HOW_OFTEN, DATES;

    private static final Map<String, PlanWords> BY_NAME = Collections.unmodifiableMap(byName());

    /** All of them, by the names that the templates ask for. */
    public static Map<String, PlanWords> all() {
        return BY_NAME;
    }

    private static Map<String, PlanWords> byName() {
        Map<String, PlanWords> all = new TreeMap<>();
        Arrays.stream(values()).forEach(word -> all.put(word.name(), word));
        return all;
    }

    @Override
    public String textId() {
        return Localizable.idOf("sheetWords", this);
    }
}
