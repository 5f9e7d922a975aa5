// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.text.Message;

/** A request about an existing softener; its parts make a {@link SoftenerCase}. */
public interface CaseRequest {

    WaterRequest water();

    HouseholdRequest household();

    SoftenerRequest softener();

    PreferencesRequest preferences();

    AnswerUnits units();

    Long seed();

    /** What was seen on site; null where it is not asked for. */
    default SiteRequest site() {
        return null;
    }

    /** Reports a softener without the control that is to be looked at. */
    static void requireControl(SoftenerRequest softener, Violations at) {
        if (softener != null && softener.control() == null && !at.at("softener").at("control").here()) {
            at.at("softener").add("control", Code.MISSING, Message.of("settingsReview.missingControlGivesWhat"));
        }
    }
}
