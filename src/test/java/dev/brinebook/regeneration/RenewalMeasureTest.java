// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.regeneration.RenewalTable.Detail;
import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Held to the sum over the nights of each cycle, one after another, which needs no matrix. */
class RenewalMeasureTest {

    private static final double ROUNDING = 1e-9;
    private static final double CUT = 1e-4;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # use of each weekday         | scatter | leave | come back | steps | count | bed, in the same litres
            # tolerance is 1e-9; where days scatter widely, the sum over nights cuts chances to wait that come to more than 1, 1e-4
            100 100 100 100 100 100 100   | 0.42    | 0     | 1         | 10    | 900   | 1100
            100 100 100 100 100 100 100   | 0.42    | 0.3   | 0.2       | 10    | 900   | 1100
            100 100 100 100 100 120 120   | 0.30    | 0.33  | 0.143     | 10    | 700   | 900
            31 42 53 24 35 66 57          | 0.45    | 0     | 1         | 10    | 400   | 450
            31 42 53 24 35 66 57          | 0.8     | 0.05  | 0.3       | 20    | 400   | 300
            0 0 0 0 110 190 150           | 0.5     | 0     | 1         | 10    | 600   | 700
            0 40 0 0 110 190 0            | 0.6     | 0.2   | 0.5       | 10    | 500   | 420
            100 100 100 100 100 100 100   | 1.1     | 0.1   | 0.9       | 20    | 300   | 300
            50 60 70 80 90 100 110        | 0.95    | 0     | 1         | 20    | 20    | 60
            """)
    void cyclesThatOnlyUseEndsAreThoseOfAllNights(String week, double cv, double leave, double comeBack, int steps, double call,
            double bed) {
        double[] means = Arrays.stream(week.split(" ")).mapToDouble(Double::parseDouble).toArray();
        WaitingRule rule = WaitingRule.delayed(bed, call, bed, Policy.NO_OVERRIDE);
        RenewalTable table = new RenewalTable(means, cv, leave, comeBack, steps);
        Cycles.Rates measured = table.cycles(rule, Detail.HARD_LITRES).rates();
        Cycles.Rates summed = new RenewalTable(means, cv, leave, comeBack, steps).cycles(rule, Detail.EACH_NIGHT).rates();
        double tolerance = cv > MeterRates.LARGEST_CV ? CUT : ROUNDING;
        assertEquals(1, measured.regenerations() / summed.regenerations(), tolerance);
        assertEquals(1, measured.hardDays() / summed.hardDays(), tolerance);
        assertEquals(1, measured.hardLitres() / summed.hardLitres(), tolerance);
        assertEquals(1, measured.ended(), tolerance);
        assertEquals(0, measured.overrides());
        assertEquals(measured, table.cycles(rule, Detail.HARD_LITRES).rates(), "asked again");
    }
}
