// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.apache.poi.ss.formula.functions.FinanceLib;
import org.apache.poi.ss.formula.functions.Irr;
import org.junit.jupiter.api.Test;

/** Properties of every pair of alternatives, on pairs generated from printed seeds. */
class AgainstBaselinePropertiesTest {

    private static final double NEVER = 1e9;
    private static final Alternative BASELINE = Alternatives.of(Outlay.NONE, 1_000);

    @Test
    void isTheDifferenceOfLifeCycleCosts() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            Alternative one = Alternatives.random(random);
            Alternative other = Alternatives.random(random);
            Prices prices = Alternatives.prices(0.08 * random.nextDouble(), 0.1 * random.nextDouble());
            int horizon = 1 + random.nextInt(40);
            double difference = LifeCycleCost.of(other, horizon, prices) - LifeCycleCost.of(one, horizon, prices);
            double worth = AgainstBaseline.of(one, other, horizon, prices).netPresentValue();
            assertEquals(difference, worth, 1e-7, "seed " + seed);
            assertEquals(-worth, AgainstBaseline.of(other, one, horizon, prices).netPresentValue(), 1e-7, "seed " + seed);
            assertEquals(0, AgainstBaseline.of(one, one, horizon, prices).netPresentValue(), "seed " + seed);
        }
    }

    /** Source: Apache POI 5.5.1, Irr.irr from its guess of 10 % and FinanceLib.npv, on the payments subtracted here. */
    @Test
    void agreesWithASpreadsheetOnRandomPairs() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            int horizon = 5 + random.nextInt(20);
            Prices prices = Alternatives.prices(0.04 * random.nextDouble(), 0.02 + 0.1 * random.nextDouble());
            Alternative one = saving(random, horizon);
            double[] payments = one.payments(horizon, prices);
            double[] old = BASELINE.payments(horizon, prices);
            double[] flows = new double[horizon + 1];
            for (int year = 0; year <= horizon; year++) {
                flows[year] = old[year] - payments[year];
            }
            AgainstBaseline worth = AgainstBaseline.of(one, BASELINE, horizon, prices);
            double spreadsheet = flows[0] + FinanceLib.npv(prices.discountSharePerYear(), Flows.savings(flows));
            assertEquals(spreadsheet, worth.netPresentValue(), 1e-8, "seed " + seed);
            assertTrue(worth.rateOfReturn().unique(), "seed " + seed);
            assertEquals(Irr.irr(flows), worth.rateOfReturn().rate().value(), 1e-7, "seed " + seed);
        }
    }

    /** Replacements by their whole worth make flows that change sign more than once: each is flagged, some have a rate. */
    @Test
    void flagsEveryPairWhoseFlowsChangeSignAgain() {
        int several = 0;
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            AgainstBaseline worth = AgainstBaseline.of(Alternatives.random(random), BASELINE, 20,
                    Alternatives.prices(0.02, 0.05));
            double[] flows = worth.cashFlows().stream().mapToDouble(flow -> flow).toArray();
            long changes = changesByPairs(worth.cashFlows());
            assertEquals(changes, worth.rateOfReturn().signChanges(), "seed " + seed);
            if (changes > 1) {
                assertTrue(!worth.rateOfReturn().unique(), "seed " + seed);
                several++;
            }
            if (worth.rateOfReturn().rate().exists()) {
                double rate = worth.rateOfReturn().rate().value();
                double[] sizes = DoubleStream.of(flows).map(Math::abs).toArray();
                assertEquals(0, CashFlows.netPresentValue(rate, flows) / CashFlows.netPresentValue(rate, sizes), 1e-10,
                        "seed " + seed + ", rate " + rate);
            }
        }
        assertTrue(several > 50, "pairs with several changes " + several);
    }

    @Test
    void fallsWithTheDiscountRateWhereSavingsFollowAnOutlay() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            int horizon = 1 + random.nextInt(30);
            Alternative one = saving(random, horizon);
            double growth = 0.05 * random.nextDouble();
            double rate = 0.2 * random.nextDouble();
            assertTrue(AgainstBaseline.of(one, BASELINE, horizon, Alternatives.prices(growth, rate + 0.01)).netPresentValue()
                    < AgainstBaseline.of(one, BASELINE, horizon, Alternatives.prices(growth, rate)).netPresentValue(),
                    "seed " + seed);
        }
    }

    /** With growth below the discount rate, so that nobody gains by buying dear what is still worth something later. */
    @Test
    void isNeverPaidBackSoonerAtMoreCost() {
        int paid = 0;
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            Alternative one = Alternatives.random(random);
            Outlay outlay = one.outlay();
            Prices prices = Alternatives.prices(0.03 * random.nextDouble(), 0.03 + 0.05 * random.nextDouble());
            int horizon = 1 + random.nextInt(40);
            Alternative dearer = new Alternative("dearer", new Outlay(outlay.firstCost() * (1 + random.nextDouble()),
                    outlay.rebate(), outlay.lifeYears(), outlay.financedShare(), outlay.loanYears(),
                    outlay.loanSharePerYear()), one.yearly());
            Alternative thirstier = new Alternative("thirstier", outlay, new YearlyCost(one.yearly().salt(),
                    one.yearly().water() + 200 * random.nextDouble(), one.yearly().sewer(), one.yearly().service()));
            AgainstBaseline worth = AgainstBaseline.of(one, BASELINE, horizon, prices);
            for (Alternative other : List.of(dearer, thirstier)) {
                AgainstBaseline less = AgainstBaseline.of(other, BASELINE, horizon, prices);
                String at = "seed " + seed + ", " + other.name();
                assertTrue(less.simplePaybackYears().asOptional().orElse(NEVER)
                        >= worth.simplePaybackYears().asOptional().orElse(NEVER), at);
                assertTrue(less.discountedPaybackYears().asOptional().orElse(NEVER)
                        >= worth.discountedPaybackYears().asOptional().orElse(NEVER) - 1e-9, at);
            }
            paid += worth.discountedPaybackYears().exists() ? 1 : 0;
        }
        assertTrue(paid > 100 && paid < 300, "both outcomes must have been seen, paid " + paid);
    }

    /** Ratios, rates and years have no currency; money has. */
    @Test
    void measuresTheSameInAnotherCurrency() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            Alternative one = Alternatives.random(random);
            Alternative other = Alternatives.random(random);
            Prices prices = Alternatives.prices(0.03, 0.05);
            AgainstBaseline ours = AgainstBaseline.of(one, other, 15, prices);
            AgainstBaseline theirs = AgainstBaseline.of(Alternatives.scaled(one, 1_000), Alternatives.scaled(other, 1_000),
                    15, prices);
            String at = "seed " + seed;
            assertEquals(ours.netPresentValue() * 1_000, theirs.netPresentValue(), 1e-4, at);
            assertEquals(ours.discountedPaybackYears().asOptional().orElse(NEVER),
                    theirs.discountedPaybackYears().asOptional().orElse(NEVER), 1e-6, at);
            assertEquals(ours.savingsToInvestmentRatio().asOptional().orElse(NEVER),
                    theirs.savingsToInvestmentRatio().asOptional().orElse(NEVER), 1e-6, at);
            assertEquals(ours.rateOfReturn().signChanges(), theirs.rateOfReturn().signChanges(), at);
        }
    }

    @Test
    void isWorthNoLessAtDearerSaltWhereItSavesSalt() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            YearlyUse much = new YearlyUse(90, 100 + 200 * random.nextDouble(), 20_000, 0);
            YearlyUse little = new YearlyUse(50, much.saltKilograms() * random.nextDouble(),
                    40_000 * random.nextDouble(), 0);
            Outlay outlay = new Outlay(1_000 * random.nextDouble(), 0, 1 + random.nextInt(30));
            double salt = random.nextDouble();
            List<Double> worths = Stream.of(salt, salt * 1.01, salt + 1).map(price -> {
                Prices prices = new Prices(price, 2, 2, 0, 0.03, 0.05);
                return AgainstBaseline.of(new Alternative("little", outlay, YearlyCost.of(little, prices)),
                        new Alternative("much", Outlay.NONE, YearlyCost.of(much, prices)), 12, prices).netPresentValue();
            }).toList();
            assertTrue(worths.get(1) >= worths.get(0) && worths.get(2) >= worths.get(1), "seed " + seed + worths);
        }
    }

    /** Worth doing by one measure is worth doing by all: the handbook's rule where there is one change of sign. */
    @Test
    void judgesAlikeByEveryMeasure() {
        int worthDoing = 0;
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            int horizon = 2 + random.nextInt(20);
            Prices prices = Alternatives.prices(0.02, 0.02 + 0.1 * random.nextDouble());
            AgainstBaseline worth = AgainstBaseline.of(saving(random, horizon), BASELINE, horizon, prices);
            boolean good = worth.netPresentValue() > 0;
            String at = "seed " + seed;
            assertEquals(good, worth.savingsToInvestmentRatio().value() > 1, at);
            assertEquals(good, worth.adjustedRateOfReturn().value() > prices.discountSharePerYear(), at);
            assertEquals(good, worth.rateOfReturn().rate().value() > prices.discountSharePerYear(), at);
            assertEquals(good, worth.discountedPaybackYears().exists(), at);
            worthDoing += good ? 1 : 0;
        }
        assertTrue(worthDoing > 20 && worthDoing < 180, "both outcomes must have been seen, " + worthDoing);
    }

    /** Costs and saves, and lasts to the horizon or beyond: an outlay first, savings after it. */
    private static Alternative saving(Random random, int horizon) {
        double yearly = 1_000 - 50 - 250 * random.nextDouble();
        double cost = (1_000 - yearly) * horizon * (0.2 + 1.2 * random.nextDouble());
        return Alternatives.of(new Outlay(cost, 0.2 * cost * random.nextDouble(),
                Math.min(horizon + random.nextInt(5), Outlay.MAX_LIFE_YEARS)), yearly);
    }

    /** Counted otherwise than by the class under test: pairs of neighbours of unlike sign once zeros are left out. */
    private static long changesByPairs(List<Double> flows) {
        List<Double> signs = flows.stream().map(Math::signum).filter(sign -> sign != 0).toList();
        long changes = 0;
        for (int i = 1; i < signs.size(); i++) {
            changes += signs.get(i - 1).equals(signs.get(i)) ? 0 : 1;
        }
        return changes;
    }
}
