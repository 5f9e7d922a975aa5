// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.savings;

import dev.brinebook.text.Localizable;

/** What makes a saving uncertain. */
public enum SavingsError implements Localizable {
    /** Salt of a regeneration. */
    DOSE,
    /** Bags, and the level of the salt at both ends. */
    SALT_BOOKS,
    /** Regenerations are whole numbers, and do not start and end with the period. */
    COUNT,
    /** The use of some days is not that of the long run. */
    DAYS,
    /** The level of use may have moved, as nobody read the meter. */
    LEVEL;

    private final String textId = Localizable.idOf("savingsError", this);

    /** What to do about it. */
    @Override
    public String textId() {
        return textId;
    }
}
