// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.Rows;
import dev.brinebook.water.WaterAnalysis;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class FeedWaterTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/resin/worked-feed-water.csv", useHeadersInDisplayName = true)
    void takesItsCationsFromTheAnalysis(double hardnessMgPerL, double calciumShare, Double sodiumMgPerL,
            Double dissolvedSolidsMgPerL, double calcium, double magnesium, double sodium) {
        FeedWater water = FeedWater.of(analysis(hardnessMgPerL, sodiumMgPerL, dissolvedSolidsMgPerL), calciumShare, 39.098);
        assertEquals(calcium / 1000, water.calciumEquivalentsPerLitre(), 1e-12);
        assertEquals(magnesium / 1000, water.magnesiumEquivalentsPerLitre(), 1e-12);
        assertEquals(sodium / 1000, water.sodiumEquivalentsPerLitre(), 1e-12);
        assertEquals(0.001, water.potassiumEquivalentsPerLitre(), 1e-12);
        assertEquals(hardnessMgPerL, water.hardnessMgPerL(), 1e-9);
        assertEquals((calcium + magnesium + sodium + 1) / 1000, water.totalEquivalentsPerLitre(), 1e-12);
    }

    @Test
    void readsEveryRow() {
        assertEquals(5, Rows.in("/resin/worked-feed-water.csv"));
    }

    @Test
    void aBrineHoldsItsSaltAlone() {
        assertEquals(new FeedWater(0, 0, 1.8, 0), FeedWater.brine(Salt.SODIUM_CHLORIDE, 1.8));
        assertEquals(new FeedWater(0, 0, 0, 1.8), FeedWater.brine(Salt.POTASSIUM_CHLORIDE, 1.8));
    }

    @Test
    void refusesWhatNoWaterHolds() {
        assertThrows(IllegalArgumentException.class, () -> new FeedWater(-1e-9, 0, 0.001, 0));
        assertThrows(IllegalArgumentException.class, () -> new FeedWater(0, 0, 6.1, 0));
        assertThrows(IllegalArgumentException.class, () -> new FeedWater(0, Double.NaN, 0, 0));
        WaterAnalysis water = analysis(100, null, null);
        assertThrows(IllegalArgumentException.class, () -> FeedWater.of(water, 1.01, 0));
    }

    private static WaterAnalysis analysis(double hardnessMgPerL, Double sodiumMgPerL, Double dissolvedSolidsMgPerL) {
        OptionalDouble none = OptionalDouble.empty();
        return WaterAnalysis.ofHardness(hardnessMgPerL).sodiumMgPerL(optional(sodiumMgPerL))
                .dissolvedSolidsMgPerL(optional(dissolvedSolidsMgPerL)).build();
    }

    private static OptionalDouble optional(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
