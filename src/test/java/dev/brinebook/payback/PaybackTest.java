// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class PaybackTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/payback/published-payback.csv", useHeadersInDisplayName = true)
    void agreesWithPublishedDiscountedPaybacks(double investment, double saving, double ratePercent, int years,
            String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance, Payback.discountedYears(investment, ratePercent / 100,
                CashFlows.growing(saving, 0, years)).value());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/payback/worked-payback.csv", useHeadersInDisplayName = true)
    void agreesWithWorkedSimplePaybacks(double investment, double saving, String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance, Payback.simpleYears(investment, saving, 10).value());
    }

    @Test
    void readsEveryRow() {
        assertEquals(1, Rows.in("/payback/published-payback.csv"));
        assertEquals(2, Rows.in("/payback/worked-payback.csv"));
    }

    /** On the discounting curve of an equal yearly saving: n = -ln(1 - I d / S) / ln(1 + d). */
    @Test
    void documentsWhatSharingOutOnTheCurveWouldGive() {
        Printed.assertAgrees("4.43", null, -Math.log(1 - 350 * 0.05 / 90) / Math.log(1.05));
        double shared = Payback.discountedYears(350, 0.05, CashFlows.growing(90, 0, 10)).value();
        Printed.assertAgrees("4.44", null, shared);
        assertEquals(5, Math.ceil(shared));
    }

    @Test
    void withoutDiscountIsTheSimplePayback() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            double saving = 10 + 90 * random.nextDouble();
            double investment = saving * 39 * (0.01 + 0.99 * random.nextDouble());
            assertEquals(Payback.simpleYears(investment, saving, 40).value(),
                    Payback.discountedYears(investment, 0, CashFlows.growing(saving, 0, 40)).value(), 1e-9,
                    "seed " + seed);
        }
    }

    @Test
    void isNeverShortenedByMoreCostAndNeverChangedByTheCurrency() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            double[] flows = Flows.ordinary(random);
            double[] savings = Flows.savings(flows);
            double cost = -flows[0];
            double dearer = cost * (1 + random.nextDouble());
            double rate = 0.2 * random.nextDouble();
            String at = "seed " + seed;
            assertTrue(Payback.simpleYears(dearer, savings[0], 40).asOptional().orElse(1e9)
                    >= Payback.simpleYears(cost, savings[0], 40).asOptional().orElse(1e9), at);
            OptionalResult payback = Payback.discountedYears(cost, rate, savings);
            assertTrue(Payback.discountedYears(dearer, rate, savings).asOptional().orElse(1e9)
                    >= payback.asOptional().orElse(1e9), at);
            assertEquals(payback.asOptional().orElse(-1),
                    Payback.discountedYears(cost * 137, rate, Flows.scaled(savings, 137)).asOptional().orElse(-1),
                    1e-9, at);
        }
    }

    /** Paying back within the horizon and a positive net present value are the same thing. */
    @Test
    void existsExactlyWhenTheNetPresentValueIsNotNegative() {
        int paid = 0;
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            double[] flows = Flows.ordinary(random);
            double rate = 0.2 * random.nextDouble();
            boolean exists = Payback.discountedYears(-flows[0], rate, Flows.savings(flows)).exists();
            assertEquals(CashFlows.netPresentValue(rate, flows) >= 0, exists, "seed " + seed);
            paid += exists ? 1 : 0;
        }
        assertTrue(paid > 20 && paid < 180, "both outcomes must have been seen, paid " + paid);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.0, -1e-300, -90})
    void hasNoNumberWhereNothingIsSaved(double saving) {
        assertEquals(NoResultReason.NOTHING_SAVED, Payback.simpleYears(350, saving, 10).reason());
        assertEquals(NoResultReason.NOTHING_SAVED,
                Payback.discountedYears(350, 0.05, CashFlows.growing(saving, 0.04, 10)).reason());
    }

    @Test
    void saysWhyThereIsNoPayback() {
        assertEquals(NoResultReason.NO_INVESTMENT, Payback.simpleYears(0, 90, 10).reason());
        assertEquals(NoResultReason.NO_INVESTMENT, Payback.discountedYears(0, 0.05, 90).reason());
        assertEquals(NoResultReason.NO_INVESTMENT, Payback.discountedYears(0, 0.05, -90).reason(), "and nothing is saved");
        assertEquals(NoResultReason.NOTHING_SAVED, Payback.discountedYears(350, 0.05, 400, -500).reason(), "lost again later");
        assertEquals(NoResultReason.NOTHING_SAVED, Payback.discountedYears(350, 0, new double[] {50, -50}, new double[2]).reason());
        assertEquals(NoResultReason.NOT_WITHIN_HORIZON, Payback.discountedYears(350, 0.05, 90, 90).reason());
        assertEquals(10, Payback.simpleYears(900, 90, 10).value());
        assertEquals(NoResultReason.NOT_WITHIN_HORIZON, Payback.simpleYears(901, 90, 10).reason());
        assertEquals(NoResultReason.NOT_WITHIN_HORIZON, Payback.simpleYears(350, Double.MIN_VALUE, 40).reason());
        assertThrows(IllegalArgumentException.class, () -> Payback.simpleYears(-1, 90, 10));
        assertThrows(IllegalArgumentException.class, () -> Payback.discountedYears(1, -1, 90));
    }

    @Test
    void isAWholeYearWhenPaidBackAtItsEnd() {
        assertEquals(2, Payback.discountedYears(180, 0, 90, 90, 90).value());
        assertEquals(1, Payback.discountedYears(180, 0, new double[] {90}, new double[] {90}).value(), "what is left counts");
    }
}
