// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.complaint;

import dev.brinebook.text.ListedOnce;

/** What a person says is wrong. The order is that of the columns of {@code symptoms.csv}. */
@ListedOnce("What a person says is wrong.")
public enum Symptom {
    HARD_ALWAYS, HARD_AT_TIMES, HARD_AT_WEEKENDS, HARD_HOT_ONLY, SALTY, MUCH_SALT, NO_SALT_USED, BRINE_TANK_FULL, WATER_TO_DRAIN,
    LOW_PRESSURE, COLOUR, RESIN_IN_TAPS, ODOUR, SLIPPERY, REGENERATES_TOO_OFTEN, NEVER_REGENERATES, WRONG_HOUR
}
