// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.household.Country;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.text.Message;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

@SchemaDescription("Homes with readings before and after the same kind of change.")
public record FleetSavingsRequest(
        @Property(value = "The homes.", required = true, minItems = 1, maxItems = FleetSavingsRequest.MAX_HOMES)
        List<FleetHomeRequest> homes,
        @Property("What was promised, of homes that have no promise of their own.") SavingsPromiseRequest promise,
        @Property(value = "Country. Sets the default units and the size of a bag.", defaultCode = "unitedStates",
                example = "\"germany\"") Country country,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units)
        implements Checked {

    static final int MAX_HOMES = 300;

    @Override
    public void check(Violations at) {
        Set<String> names = new HashSet<>();
        for (int i = 0; homes != null && i < homes.size() && homes.size() <= MAX_HOMES; i++) {
            FleetHomeRequest home = homes.get(i);
            if (home == null) {
                continue;
            }
            Violations place = at.at("homes").at(i);
            if (home.name() != null && !names.add(home.name())) {
                place.add("name", Code.INCONSISTENT, Message.of("problem.common.mustDifferNamesBefore"));
            }
            SavingsVerificationRequest.checkHome(home.before(), home.after(), home.changedOn(), LocalPrices.of(null, country), place);
        }
    }
}
