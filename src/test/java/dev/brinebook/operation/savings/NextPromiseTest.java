// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Occupancy;
import dev.brinebook.household.UseChange;
import dev.brinebook.http.TestServer;
import dev.brinebook.measurement.Reading;
import dev.brinebook.savings.FleetSavings;
import dev.brinebook.savings.SavingsPeriod;
import dev.brinebook.savings.StartedBy;
import dev.brinebook.savings.UseScatter;
import io.restassured.path.json.JsonPath;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a fleet says goes into the next calculation, and the form of a dealer's table. */
class NextPromiseTest {

    private static final double GALLONS = 60;

    /** Homes that use more or less than was taken for the promise: the factor on the use predicts what they save, within 2 % of it. */
    @ParameterizedTest
    @ValueSource(doubles = {0.85, 1.15, 1.3})
    void theFactorOnTheUsePredictsWhatWasSeen(double trueFactor) {
        JsonPath promised = payback(GALLONS);
        JsonPath seen = payback(trueFactor * GALLONS);
        double promise = saved(promised);
        int regenerations = (int) Math.round(promised.getDouble("converted.regenerations"));
        SavingsPeriod year = new SavingsPeriod(365, StartedBy.METER_DELAYED, OptionalDouble.of(900), OptionalInt.of(regenerations),
                Optional.of(Reading.normal(5, 0.1)), Optional.empty(), OptionalDouble.empty());
        UseScatter scatter = UseScatter.of(DayVariation.FOUR_OR_MORE_PERSONS_CV, Occupancy.ALWAYS, UseChange.NONE);
        double factor = new FleetSavings(30, Math.log(1 - saved(seen)), 0.01, 0).useFactor(promise, year.response(scatter));
        assertEquals(trueFactor, factor, 0.03 * trueFactor, "from " + promise + " to " + saved(seen));
        assertEquals(saved(seen), saved(payback(factor * GALLONS)), 0.02, "the next promise");
    }

    private static double saved(JsonPath payback) {
        return 1 - payback.getDouble("converted.salt.value") / payback.getDouble("asFound.salt.value");
    }

    private static JsonPath payback(double gallons) {
        return TestServer.post("/v1/retrofit-payback", String.format(Locale.ROOT, """
                {"water": {"hardness": {"value": 18.5, "unit": "gpg"}},
                 "household": {"people": 4, "usePerPerson": {"value": %s, "unit": "gal"}},
                 "softener": {"resinVolume": {"value": 1.5, "unit": "ft3"}, "saltPerRegeneration": {"value": 12, "unit": "lb"},
                  "control": {"kind": "clock", "everyDays": 2}},
                 "metered": {"kind": "meteredDelayed", "reserve": {"rule": "volume", "volume": {"value": 240, "unit": "gal"}}},
                 "retrofit": {"cost": {"value": 350, "unit": "USD"}}}""", gallons)).statusCode(200).extract().jsonPath();
    }

    /** A row a home, as a spreadsheet has them. */
    @Test
    void takesATableOfHomes() {
        String answer = TestServer.postText("/v1/bulk/verifySavings", "text/csv", """
                before.from,before.to,before.control,before.regenerations,before.saltPerRegeneration.value,\
                before.saltPerRegeneration.unit,after.from,after.to,after.control,after.regenerations,after.saltPerRegeneration.value,\
                after.saltPerRegeneration.unit,promise.saltPercent
                2026-01-01,2026-04-01,clock,30,15,lb,2026-05-01,2026-07-30,clock,20,15,lb,30
                2026-01-01,2026-04-01,clock,30,15,lb,2026-05-01,2026-07-30,clock,28,15,lb,30
                """).statusCode(200).extract().asString();
        assertEquals(3, answer.lines().count(), answer);
        assertTrue(answer.contains("The promise of 30\u00a0% is kept.\",confirmed,33.3333,"), answer);
        assertTrue(answer.contains("The promise of 30\u00a0% is not kept.\",notConfirmed,6.66667,"), answer);
    }

    /** Two homes are too few for a mean. */
    @Test
    void saysThatTwoHomesAreTooFew() {
        String home = """
                {"name": "%s", "before": {"from": "2026-01-01", "to": "2026-04-01", "control": "clock", "regenerations": 30,
                  "saltPerRegeneration": {"value": 15, "unit": "lb"}}, "after": {"from": "2026-05-01", "to": "2026-07-30",
                  "control": "clock", "regenerations": 20, "saltPerRegeneration": {"value": 15, "unit": "lb"}}}""";
        TestServer.post("/v1/fleet-savings-verification", "{\"homes\": [" + home.formatted("a") + "," + home.formatted("b") + "]}")
                .statusCode(200).body("pooled", equalTo(null)).body("homes.name", equalTo(List.of("a", "b")));
        TestServer.post("/v1/fleet-savings-verification", "{\"homes\": [" + home.formatted("a") + "," + home.formatted("a") + "]}")
                .statusCode(422).body("errors[0].pointer", equalTo("/homes/1/name"));
    }
}
