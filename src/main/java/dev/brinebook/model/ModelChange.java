// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.model;

import dev.brinebook.text.Localizable;

/**
 * A change of numbers that an older callable version does not have. The calculation asks for it in one place,
 * {@link Model#has}; once every callable version has it, constant and question are deleted.
 */
public enum ModelChange implements Localizable {

    /** The salt doses tried for a bed that is still to be bought are those its controller can set. */
    SALT_STEPS_OF_NEW_BEDS("2.3.0", "salt-steps-of-new-beds"),
    /** Brine and water behind an injector add up by weight, not by volume. */
    BRINE_BY_WEIGHT("2.3.0", "brine-by-weight"),
    /** What equal years differ by is zero. */
    EQUAL_YEARS_SAVE_NOTHING("2.3.0", "equal-years-save-nothing"),
    /** A softener whose tank size is not given is not refused for the tank that is assumed. */
    ASSUMED_TANKS_REFUSE_NOTHING("2.3.0", "assumed-tanks-refuse-nothing"),
    /** Iron and manganese build up on the resin only on days on which water runs. */
    IRON_ON_DAYS_OF_USE("2.3.0", "iron-on-days-of-use"),
    /** A softener regenerates at the latest after the days that are the rule in its country. */
    IDLE_DAYS_BY_COUNTRY("2.3.0", "idle-days-by-country"),
    /** A softener that is too small is replaced, rather than set so that it costs more. */
    TOO_SMALL_SOFTENERS("2.3.0", "too-small-softeners"),
    /** The step that corrects the settings leaves those that are close enough, as the findings do. */
    CLOSE_SETTINGS_STAY("2.3.0", "close-settings-stay"),
    /** The payback of a retrofit is over the step below it. */
    PAYBACK_OVER_THE_STEP_BELOW("2.3.0", "payback-over-the-step-below");

    private final String version;
    private final String id;

    ModelChange(String version, String id) {
        this.version = version;
        this.id = id;
    }

    /** The version that it came with. */
    public String version() {
        return version;
    }

    /** Its entry in the changelog. */
    public String id() {
        return id;
    }

    /** What changed, in a sentence or two. */
    @Override
    public String textId() {
        return Localizable.idOf("modelChange", this);
    }
}
