// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.guard;

import dev.brinebook.text.ListedOnce;
import dev.brinebook.text.Localizable;

/** The closed list of reasons why a question has no number for an answer, each with the sentence that says so. */
@ListedOnce("Why there is no number.")
public enum NoResultReason implements Localizable {
    NOTHING_SAVED,
    NOT_WITHIN_HORIZON,
    NO_INVESTMENT,
    NO_SIGN_CHANGE,
    NO_RATE_IN_RANGE,
    NEVER_REGENERATES,
    ONE_REGENERATION,
    NEVER_BREAKS_EVEN,
    HARD_EVERY_NIGHT,
    RESIN_CARRIED_OUT,
    CAPACITY_ABOVE_TABLE,
    CAPACITY_BELOW_TABLE,
    NOTHING_TO_SOFTEN,
    EFFICIENCY_NOT_REACHED,
    END_POINT_NOT_HELD,
    NO_DOSE_HOLDS_END_POINT,
    CYCLES_DO_NOT_SETTLE,
    NO_FIXTURE_UNITS,
    BELOW_DEMAND_CURVE,
    ABOVE_DEMAND_CURVE,
    NO_BUSY_PROBABILITY,
    TOO_MANY_FIXTURES,
    NO_DESIGN_FLOW,
    BELOW_DESIGN_FLOWS,
    ABOVE_DESIGN_FLOWS,
    DAYS_DO_NOT_DIFFER,
    NOBODY_THERE,
    NO_SUCH_DAY_FOLLOWED;

    @Override
    public String textId() {
        return Localizable.idOf("noAnswer", this);
    }
}
