// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Days;
import dev.brinebook.household.SampledYears;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import java.time.LocalDate;
import java.util.List;
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

/** One year under five policies, and a thousand simulated years under one. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgsAppend = {"-XX:ActiveProcessorCount=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class YearBenchmark {

    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);

    private final Days days = DayVariation.FOUR_OR_MORE_PERSONS.typicalDays(FIRST, 365, WeekdayMeans.everyDay(900), 1);
    private final UseModel model = new UseModel(WeekdayMeans.everyDay(900), DayVariation.FOUR_OR_MORE_PERSONS);
    private final Regeneration regeneration = new Regeneration(2100, 5000, 250, 90);
    private final SimulationInput trial = new SimulationInput(days, 300, regeneration);
    private final Policy delayed = new MeteredDelayed(7000, 1600, 14);
    private final List<Policy> five = List.of(new ClockEveryDays(4, 0), delayed,
            new MeteredByHistory(7000, MeteredByHistory.Of.LARGEST, 1600, 14), new MeteredImmediate(7000, 14),
            new TwinAlternating(7000, 14));

    @Benchmark
    public double oneYearOfFivePolicies() {
        double salt = 0;
        for (Policy policy : five) {
            salt += Simulation.simulate(trial, policy).totals().saltGrams();
        }
        return salt;
    }

    @Benchmark
    public SimulatedYears thousandDrawnYears() {
        return SimulatedYears.of(new SampledYears(model, FIRST, 1_000, 1), 300, regeneration, delayed);
    }
}
