// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.verdict;

import dev.brinebook.text.Localizable;

/** Why a step is not taken, or what it lacks, said as a sentence without capital and full stop. */
public enum Obstacle implements Localizable {
    HARD_WATER,
    NOTHING_TO_TREAT,
    TREATMENT_ADVISED,
    NO_SOFTENER,
    METERED_ALREADY,
    TWIN_ALREADY,
    LARGE_ENOUGH,
    NONE_GIVEN,
    NONE_LARGE_ENOUGH,
    RUNS_HARD,
    LEAKS,
    NO_LARGER_SIZE,
    NO_FULL_WATER_TEST,
    COUNTER_CURRENT_ALREADY,
    SOME_HARDNESS_STAYS,
    BLENDED_AS_USUAL,
    COLD_WATER_STAYS_HARD,
    DOES_NOT_FIT;

    @Override
    public String textId() {
        return Localizable.idOf("obstacle", this);
    }
}
