// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.commissioning;

import dev.brinebook.text.Localizable;

/** What to look at once the softener is in service. Source: [CP-INSTALLATION]. */
public enum LaterCheck implements Localizable {
    LEAKS_AND_DRAIN(1),
    CLOCK_AND_COUNT(1),
    BRINE_LEVEL(7),
    FIRST_REGENERATION_BY_ITSELF(7),
    SALT_AGAINST_COUNT(30),
    HARDNESS_BEFORE_REGENERATION(30);

    private final int afterDays;

    LaterCheck(int afterDays) {
        this.afterDays = afterDays;
    }

    public int afterDays() {
        return afterDays;
    }

    @Override
    public String textId() {
        return Localizable.idOf("laterCheck", this);
    }
}
