// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Demand;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.payback.UncertainWorth.UncertainInput;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.randomness.Uncertain;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.ServiceStandard;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.water.WaterAnalysis;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** 10,000 draws of a comparison over ten years, a clock against a meter, with six uncertain inputs, on one core. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = {"-XX:ActiveProcessorCount=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class UncertainWorthBenchmark {

    private final DesignConditions duty = duty();
    private final AlternativePlan clock = way("clock", new ClockEveryDays(4), Outlay.NONE);
    private final AlternativePlan meter = way("meter", new MeteredDelayed(6000, 1200, 14), new Outlay(300, 0, 10));
    private final Comparison comparison = new Comparison(List.of(clock, meter), 0, duty,
            new Bills(Prices.unitedStates2023(), 10));
    private final List<UncertainInput> inputs = List.of(normal(Input.SALT_PRICE), normal(Input.WATER_PRICE),
            normal(Input.SEWER_PRICE), normal(Input.HARDNESS), normal(Input.DAILY_USE), normal(Input.FIRST_COST));

    @Benchmark
    public UncertainWorth tenThousandDraws() {
        return UncertainWorth.of(new UncertainCases(comparison, inputs, 1), meter, 10_000, 0);
    }

    private static UncertainInput normal(Input input) {
        return new UncertainInput(input, new Uncertain.Normal(1, 0.1));
    }

    private static AlternativePlan way(String name, Policy policy, Outlay outlay) {
        Softener softener = new Softener(new ResinBed(Exact.CUBIC_FOOT_LITRES, 9 * Exact.INCH_METRES), 48 * Exact.INCH_METRES,
                Salt.SODIUM_CHLORIDE, CapacityTable.WORKING, CycleFlows.UNKNOWN);
        SoftenerSettings setup = new SoftenerSettings(softener, SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(8), Map.of(), policy, 2);
        return new AlternativePlan(name, home -> List.of(AlternativePlan.Possible.of(setup, home)), outlay, 0);
    }

    private static DesignConditions duty() {
        OptionalDouble none = OptionalDouble.empty();
        WaterAnalysis water = WaterAnalysis.ofHardness(257).bacteriaTested(true).build();
        Demand demand = new Demand(WeekdayMeans.everyDay(900), DayVariation.FOUR_OR_MORE_PERSONS, Optional.empty(), 20, 8);
        return new DesignConditions(water, water.compensated(CompensationFactors.STANDARD), demand,
                demand.days(LocalDate.of(2026, 1, 1), 365, 1), ServiceStandard.USUAL, 3, 0);
    }
}
