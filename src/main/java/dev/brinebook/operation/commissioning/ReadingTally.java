// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.commissioning.CommissioningCheck;
import dev.brinebook.commissioning.ReadingOutcome.Verdict;
import java.util.List;
import java.util.Objects;

@SchemaDescription("What the readings come to.")
public record ReadingTally(
        @Basis(formula = "formula.commissioning.tally", source = "OWN-ASSUMPTION")
        @Property(value = "Checks that pass.", min = 0, example = "12") Integer passed,
        @Basis(formula = "formula.commissioning.tally", source = "OWN-ASSUMPTION")
        @Property(value = "Checks to measure again.", min = 0, example = "1") Integer toMeasureAgain,
        @Basis(formula = "formula.commissioning.tally", source = "OWN-ASSUMPTION")
        @Property(value = "Checks that fail.", min = 0, example = "0") Integer failed,
        @Property(value = "Checks without a reading, in order.", eachOf = CommissioningCheck.class, example = "[\"meterCount\"]")
        List<CommissioningCheck> missing) {

    static ReadingTally of(List<CommissioningCheckLine> lines) {
        return new ReadingTally(count(lines, Verdict.PASS), count(lines, Verdict.MEASURE_AGAIN), count(lines, Verdict.FAIL),
                lines.stream().filter(line -> Objects.isNull(line.verdict())).map(CommissioningCheckLine::check).toList());
    }

    private static int count(List<CommissioningCheckLine> lines, Verdict verdict) {
        return (int) lines.stream().filter(line -> line.verdict() == verdict).count();
    }
}
