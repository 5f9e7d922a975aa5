// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.softener.CaseRequest;
import dev.brinebook.request.softener.ControlRequest;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.ReserveRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("A softener with a delayed meter, to choose its reserve.")
public record ReserveChoiceRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "The household.", required = true) HouseholdRequest household,
        @Property(value = "The softener. If its control is a delayed meter, its hardness, "
                + "capacity and day override are used.", required = true) SoftenerRequest softener,
        @Property(value = "Rules to compare.", minItems = 1, maxItems = ReserveChoiceRequest.MAX_RULES,
                fallback = "a share of "
                + ReserveChoiceRequest.USUAL_SHARE + " of the meter volume, a mean day, the rule of thumb, the "
                + ReserveChoiceRequest.USUAL_PROBABILITY + " and " + ReserveChoiceRequest.HIGH_PROBABILITY
                + " quantiles of daily use, and the largest and the mean of the same weekday in the last four weeks")
        List<ReserveRequest> rules,
        @Property("Preferences: the service standard, the step of the reserve and the capacity table.") PreferencesRequest preferences,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units,
        @Property(value = "No effect: nothing is simulated. Accepted so that the same case can be sent to every operation.",
                min = 0, max = PreferencesRequest.MAX_SEED, byDefault = PreferencesRequest.DEFAULT_SEED,
                example = "1") Long seed) implements CaseRequest, Checked {

    /** The usual reserve as a share of the meter volume. */
    static final int MAX_RULES = 12;
    static final String USUAL_SHARE = "0.2";
    static final String USUAL_PROBABILITY = "0.90";
    static final String HIGH_PROBABILITY = "0.99";

    @Override
    public void check(Violations at) {
        ControlRequest control = softener == null ? null : softener.control();
        if (control != null && control.kind() != null && control.kind() != ControlRequest.Kind.METERED_DELAYED) {
            at.at("softener").at("control").add("kind", Code.INCONSISTENT,
                    Message.of("problem.regeneration.mustMetereddelayedNoOther"));
        }
    }
}
