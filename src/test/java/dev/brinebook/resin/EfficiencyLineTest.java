// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Rows;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.quantity.SaltEfficiencyUnit;
import dev.brinebook.quantity.WaterPerCapacityUnit;
import dev.brinebook.resin.EfficiencyLine.Performance;
import dev.brinebook.resin.EfficiencyLine.Shortfall;
import dev.brinebook.source.Sources;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class EfficiencyLineTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/resin/published-efficiency-lines.csv", useHeadersInDisplayName = true)
    void standsAsTheLinesSay(double grainsPerPound, double gallonsPerKilograin, boolean demandStarted,
            double intervalDays, String standings) {
        assertEquals(standings, EfficiencyLine.standings(
                performance(grainsPerPound, gallonsPerKilograin, demandStarted, intervalDays)).stream()
                .map(verdict -> switch (verdict.standing()) {
                    case MET -> "M";
                    case NOT_MET -> "N";
                    case NOT_APPLICABLE -> "-";
                }).collect(Collectors.joining()));
    }

    @Test
    void readsEveryRow() {
        assertEquals(10, Rows.in("/resin/published-efficiency-lines.csv"));
        assertEquals(5, EfficiencyLine.all().size());
        EfficiencyLine.all().forEach(line -> Sources.get(line.sourceKey()));
        assertEquals(2002, EfficiencyLine.all().get(0).installedFromYear().orElseThrow());
        assertTrue(EfficiencyLine.all().get(4).installedFromYear().isEmpty());
    }

    /** 20.0 kgr/ft³ at 5 lb/ft³ (generic resin data sheet) are 4,000 gr/lb to the last digit. */
    @Test
    void aPointOnTheLineReachesIt() {
        double dose = SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(5);
        assertTrue(EfficiencyLine.all().get(0).isReachedBy(
                CapacityTable.NEW_RESIN.saltEfficiencyGramsPerGram(Salt.SODIUM_CHLORIDE, dose)));
        assertFalse(EfficiencyLine.all().get(0).isReachedBy(SaltEfficiencyUnit.GRAIN_PER_POUND.toBase(3_999.9)));
        assertFalse(EfficiencyLine.all().get(0).isReachedBy(Double.NaN));
    }

    @Test
    void namesEachShortfall() {
        EfficiencyLine district = EfficiencyLine.all().get(4);
        assertEquals(List.of(Shortfall.SALT, Shortfall.WATER, Shortfall.INTERVAL),
                district.verdict(performance(2000, 6, true, 1)).shortfalls());
        assertEquals(List.of(), district.verdict(performance(4500, 2, true, 5)).shortfalls());
    }

    /** The rule of thumb, 24,000 gr from 10 lb, lies below every line (section 116790 asks 2,850 even of clocks). */
    @Test
    void theRuleOfThumbMeetsNoLine() {
        for (boolean demandStarted : new boolean[] {true, false}) {
            assertTrue(EfficiencyLine.standings(performance(2400, 2, demandStarted, 7)).stream()
                    .noneMatch(verdict -> verdict.standing() == EfficiencyLine.Standing.MET));
        }
    }

    @Test
    void refusesAnImpossibleLineAndPerformance() {
        EfficiencyLine line = EfficiencyLine.all().get(3);
        assertThrows(IllegalArgumentException.class, () -> new EfficiencyLine("X", "MMSD", line.startedBy(), 0.9,
                line.maxWaterLitresPerKilogram(), line.minDaysBetween(), line.installedFromYear()));
        assertThrows(IllegalArgumentException.class, () -> performance(Double.NaN, 1, true, 1));
        assertThrows(IllegalArgumentException.class, () -> performance(4000, -1, true, 1));
        assertThrows(IllegalArgumentException.class, () -> performance(4000, 1, true, 0));
    }

    private static Performance performance(double grainsPerPound, double gallonsPerKilograin, boolean demandStarted,
            double intervalDays) {
        return new Performance(SaltEfficiencyUnit.GRAIN_PER_POUND.toBase(grainsPerPound),
                WaterPerCapacityUnit.GALLON_PER_KILOGRAIN.toBase(gallonsPerKilograin), demandStarted, intervalDays);
    }
}
