// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

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

/** The exact distribution of what 200 fixtures draw at once: 20 times the fixtures of the published example house. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = {"-XX:ActiveProcessorCount=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class FixturesBenchmark {

    private final List<PeakFlow.Fixtures> fixtures = List.of(PeakFlow.Fixtures.gpm(40, 0.045, 2.0),
            PeakFlow.Fixtures.gpm(60, 0.02, 1.5), PeakFlow.Fixtures.gpm(20, 0.02, 2.2),
            PeakFlow.Fixtures.gpm(40, 0.01, 3.0), PeakFlow.Fixtures.gpm(20, 0.055, 3.5),
            PeakFlow.Fixtures.gpm(20, 0.005, 1.3));

    @Benchmark
    public FlowDistribution twoHundredFixtures() {
        return FlowDistribution.of(fixtures);
    }
}
