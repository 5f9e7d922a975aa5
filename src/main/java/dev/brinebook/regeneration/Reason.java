// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.text.Localizable;

/** What started a regeneration, with the sentence that says so. */
public enum Reason implements Localizable {
    /** The time clock, whatever was used. */
    CLOCK,
    /** The meter had counted its volume, or all but the reserve. */
    METER,
    /** The longest time allowed between two regenerations had passed. */
    OVERRIDE;

    @Override
    public String textId() {
        return Localizable.idOf("reason", this);
    }
}
