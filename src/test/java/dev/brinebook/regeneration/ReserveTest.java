// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.Printed;
import dev.brinebook.household.WeekdayMeans;
import org.junit.jupiter.api.Test;

class ReserveTest {

    private static final WeekdayMeans MEANS = new WeekdayMeans(900, 900, 900, 900, 900, 1000, 1500);

    @Test
    void eachRuleResolvesToLitres() {
        assertEquals(700, new Reserve.FixedVolume(700).litres(5000, MEANS, 0.45));
        assertEquals(1000, new Reserve.ShareOfMeter(0.2).litres(5000, MEANS, 0.45));
        assertEquals(940, new Reserve.MeanDay(940).litres(5000, MEANS, 0.45), "the day, not the week");
    }

    /** The quantile of a mean-1 gamma day, CV 0.45 and p 0.95, is 1.836 (DAIAD trial, computed); 1.5 m³ x 1.836. */
    @Test
    void aPercentileCoversTheBusiestWeekday() {
        Printed.assertAgrees("1.836", null, new Reserve.PercentileDay(0.95).litres(5000, MEANS, 0.45) / 1500);
        assertEquals(1500, new Reserve.PercentileDay(0.95).litres(5000, MEANS, 0));
    }

    @Test
    void refusesValuesOutOfRange() {
        assertThrows(IllegalArgumentException.class, () -> new Reserve.FixedVolume(-1));
        assertThrows(IllegalArgumentException.class, () -> new Reserve.ShareOfMeter(0.91));
        assertThrows(IllegalArgumentException.class, () -> new Reserve.ShareOfMeter(0.5).litres(0, MEANS, 0.45));
        assertThrows(IllegalArgumentException.class, () -> new Reserve.PercentileDay(0.4));
        assertThrows(IllegalArgumentException.class, () -> new Reserve.PercentileDay(0.9995));
    }
}
