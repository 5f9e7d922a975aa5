// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.household.Demand;
import java.time.LocalDate;

@SchemaDescription("A home of a fleet, with its readings before and after the change.")
public record FleetHomeRequest(
        @Property(value = "Your name of the home. No two are the same.", required = true, minItems = 1, maxItems = 80,
                example = "\"home 17\"") String name,
        @Property(value = "The period before the change.", required = true) SavingsPeriodRequest before,
        @Property(value = "The period after it, not before the end of the other.", required = true) SavingsPeriodRequest after,
        @Property(value = "What was promised to this home.", fallback = "promise of the request") SavingsPromiseRequest promise,
        @Property(value = "Date of the change.", fallback = "unknown", example = "\"2026-04-02\"") LocalDate changedOn,
        @Property(value = "Number of residents, for the scatter of the days.", min = 1, max = Demand.MAX_PEOPLE, fallback = "unknown",
                example = "4") Integer people) {
}
