// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Demand;
import dev.brinebook.household.Occupancy;
import dev.brinebook.household.UseChange;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.ServiceStandard;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.water.WaterAnalysis;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The choice of dose and reserve for invented households, whose level wanders or does not: each time another water. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = {"-XX:ActiveProcessorCount=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 20, time = 1)
@Measurement(iterations = 10, time = 1)
public class DoseAndReserveBenchmark {

    /** An invented household. */
    public enum Household {
        TWO_PERSONS(WeekdayMeans.ofWeek(400, 1.2), DayVariation.TWO_OR_THREE_PERSONS, Occupancy.ALWAYS, 1, 15, 0),
        WEEKEND_HOUSE(new WeekdayMeans(0, 0, 0, 0, 420, 720, 570), DayVariation.UNKNOWN_PERSONS, Occupancy.ALWAYS, 1, 26, 0.1),
        LARGE_WITH_IRON(WeekdayMeans.ofWeek(1400, 1.2), DayVariation.FOUR_OR_MORE_PERSONS, Occupancy.ALWAYS, 2, 22, 1.2),
        TWO_PERSONS_WITH_ABSENCES(WeekdayMeans.ofWeek(400, 1.2), DayVariation.TWO_OR_THREE_PERSONS, Occupancy.Chain.USUAL, 1, 15,
                0);

        private final UseModel model;
        private final double cubicFeet;
        private final double gpg;
        private final double ironMgPerL;

        Household(WeekdayMeans means, DayVariation variation, Occupancy occupancy, double cubicFeet, double gpg,
                double ironMgPerL) {
            model = new UseModel(means, variation, UseModel.EVEN_MONTHS, occupancy);
            this.cubicFeet = cubicFeet;
            this.gpg = gpg;
            this.ironMgPerL = ironMgPerL;
        }

        Softener softener() {
            return new Softener(new ResinBed(cubicFeet * Exact.CUBIC_FOOT_LITRES, 12 * Exact.INCH_METRES),
                    60 * Exact.INCH_METRES, Salt.SODIUM_CHLORIDE, CapacityTable.WORKING, CycleFlows.UNKNOWN);
        }

        DesignConditions duty(double hardnessFactor, double levelSpread) {
            UseModel model = this.model.with(new UseChange(levelSpread, 0, 0));
            OptionalDouble none = OptionalDouble.empty();
            WaterAnalysis water = WaterAnalysis.ofHardness(hardnessFactor * HardnessUnit.GPG.toBase(gpg)).ironMgPerL(ironMgPerL)
                    .supply(WaterAnalysis.Supply.PRIVATE_WELL).bacteriaTested(true).build();
            Demand demand = new Demand(model, Optional.empty(), 20, 8);
            return new DesignConditions(water, water.compensated(CompensationFactors.STANDARD), demand,
                    demand.days(LocalDate.of(2026, 1, 1), 1, 1), ServiceStandard.USUAL, 3, 0);
        }
    }

    /** Between enough waters that none comes twice. */
    private static final double GOLDEN_SHARE = 0.618033988749895;

    @Param
    private Household household;
    @Param({"0", "0.18"})
    private double levelSpread;
    private double place;

    @Benchmark
    public DoseChoice choice() {
        place = (place + GOLDEN_SHARE) % 1;
        return DoseSearch.cheapest(household.softener(), household.duty(0.8 + 0.4 * place, levelSpread), new RunningCost(0.45, 2.9));
    }
}
