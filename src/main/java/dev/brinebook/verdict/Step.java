// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.verdict;

import dev.brinebook.text.Localizable;

/** What can be done, from the least to the most. */
public enum Step implements Localizable {
    /** The water is soft enough. */
    NONE_NEEDED,
    /** Something else must be taken out of the water first. */
    TREAT_FIRST,
    /** The softener as it is set. */
    AS_FOUND,
    /** The same control, its best settings. */
    SET_RIGHT,
    /** A metered controller on the same bed. */
    CONVERT,
    /** One of {@link Improvement}. */
    IMPROVE,
    /** Another softener. */
    REPLACE;

    @Override
    public String textId() {
        return Localizable.idOf("step", this);
    }
}
