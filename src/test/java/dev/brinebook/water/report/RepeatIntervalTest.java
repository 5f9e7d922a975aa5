// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.water.WaterAnalysis.Supply;
import dev.brinebook.water.report.PrintedResult.Origin;
import dev.brinebook.water.report.PrintedResult.Qualifier;
import dev.brinebook.water.report.PrintedResult.Tap;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RepeatIntervalTest {

    private static PrintedResult sample(Parameter parameter, String date, double hours) {
        return new PrintedResult(parameter, new PrintedResult.Reading(0, parameter.unit(), null, Qualifier.ABSENT),
                new PrintedResult.Testing(TestMethod.LABORATORY, OptionalDouble.empty(), 0), new PrintedResult.Sampling(Tap.RAW, false,
                        false, new Origin(1, Optional.ofNullable(date).map(LocalDate::parse), OptionalDouble.of(hours))));
    }

    private static RepeatInterval of(Parameter parameter) {
        return RepeatInterval.of(Supply.PRIVATE_WELL).stream().filter(one -> one.parameter() == parameter).findFirst().orElseThrow();
    }

    /** Years: Centers for Disease Control and Prevention; New Hampshire Department of Environmental Services. */
    @ParameterizedTest
    @CsvSource({"COLIFORM, 1", "NITRATE, 1", "PH, 1", "DISSOLVED_SOLIDS, 1", "ARSENIC, 3", "HARDNESS, 3", "LEAD, 3", "URANIUM, 3"})
    void theShortestIntervalOfAnyBodyIsTaken(Parameter parameter, int years) {
        assertEquals(years, of(parameter).years());
    }

    @Test
    void theNextTestIsDueAfterTheLastValidSample() {
        List<PrintedResult> lines = new ArrayList<>(List.of(sample(Parameter.COLIFORM, "2024-02-29", 20),
                sample(Parameter.COLIFORM, "2023-05-01", 20), sample(Parameter.COLIFORM, null, 20),
                sample(Parameter.NITRATE, "2025-05-01", 20)));
        assertEquals(Optional.of(LocalDate.of(2025, 2, 28)), of(Parameter.COLIFORM).dueOn(lines));
        lines.add(sample(Parameter.COLIFORM, "2025-06-01", 40));
        assertEquals(Optional.of(LocalDate.of(2025, 2, 28)), of(Parameter.COLIFORM).dueOn(lines), "the last one was too old to count");
        assertEquals(Optional.empty(), of(Parameter.LEAD).dueOn(lines));
    }

    @Test
    void aUtilityTestsItsOwnWater() {
        assertEquals(List.of(), RepeatInterval.of(Supply.PUBLIC_SUPPLY));
    }
}
