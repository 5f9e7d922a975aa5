// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.payback.WaterTariff.Block;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class WaterTariffTest {

    private static final double NO_END = Double.POSITIVE_INFINITY;
    private static final WaterTariff RISING =
            new WaterTariff(List.of(new Block(40, 1.5), new Block(100, 2.2), new Block(NO_END, 3.4)));

    @ParameterizedTest
    @CsvFileSource(resources = "/payback/worked-water-tariff.csv", useHeadersInDisplayName = true)
    void agreesWithBillsByHand(double household, double softener, String householdCost, String expected,
            String tolerance) {
        Printed.assertAgrees(householdCost, tolerance, RISING.yearlyCost(household));
        Printed.assertAgrees(expected, tolerance, RISING.addedCost(household, softener));
    }

    @Test
    void readsEveryRow() {
        assertEquals(9, Rows.in("/payback/worked-water-tariff.csv"));
    }

    @Test
    void isOnePriceWhereThereIsOneBlock() {
        assertEquals(4.7 * 12, WaterTariff.flat(4.7).yearlyCost(12), 1e-12);
        assertEquals(4.7 * 12, WaterTariff.flat(4.7).addedCost(500, 12), 1e-9);
    }

    /** Falling blocks are as lawful as rising ones. By hand: 10 * 3 + 5 * 1. */
    @Test
    void takesFallingBlocks() {
        WaterTariff falling = new WaterTariff(List.of(new Block(10, 3), new Block(NO_END, 1)));
        assertEquals(35, falling.yearlyCost(15), 1e-12);
    }

    /** A bill of many cubic metres is the sum of the bills of each: the price of the middle of each slice, added up. */
    @Test
    void isTheSumOfItsSlices() {
        for (int seed = 0; seed < 50; seed++) {
            Random random = new Random(seed);
            int cubicMetres = 1 + random.nextInt(150);
            double sum = 0;
            for (int i = 0; i < cubicMetres; i++) {
                sum += i < 40 ? 1.5 : i < 100 ? 2.2 : 3.4;
            }
            assertEquals(sum, RISING.yearlyCost(cubicMetres), 1e-9, "seed " + seed);
        }
    }

    /** With rising blocks the same water of a softener costs a larger household no less. */
    @Test
    void addsNoLessToALargerBillWhereBlocksRise() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            double household = 150 * random.nextDouble();
            double larger = household + 50 * random.nextDouble();
            double softener = 20 * random.nextDouble();
            assertTrue(RISING.addedCost(larger, softener) >= RISING.addedCost(household, softener) - 1e-9, "seed " + seed);
        }
    }

    @Test
    void refusesInvalidTariffs() {
        Block last = new Block(NO_END, 1);
        assertThrows(IllegalArgumentException.class, () -> new Block(0, 1));
        assertThrows(IllegalArgumentException.class, () -> new Block(Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> new Block(1, -1));
        assertThrows(IllegalArgumentException.class, () -> new Block(1, 1e10));
        assertThrows(IllegalArgumentException.class, () -> new WaterTariff(List.of()));
        assertThrows(IllegalArgumentException.class, () -> new WaterTariff(List.of(new Block(40, 1))));
        assertThrows(IllegalArgumentException.class, () -> new WaterTariff(List.of(last, last)));
        assertThrows(IllegalArgumentException.class,
                () -> new WaterTariff(List.of(new Block(40, 1), new Block(40, 2), last)));
        assertThrows(IllegalArgumentException.class, () -> RISING.yearlyCost(-1));
        assertThrows(IllegalArgumentException.class, () -> RISING.yearlyCost(1.1 * WaterTariff.MAX_CUBIC_METRES));
        assertThrows(IllegalArgumentException.class, () -> RISING.addedCost(10, -5));
        assertThrows(IllegalArgumentException.class, () -> RISING.addedCost(10, Double.NaN));
    }
}
