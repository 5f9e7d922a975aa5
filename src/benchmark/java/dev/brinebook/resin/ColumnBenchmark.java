// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.quantity.SaltDoseUnit;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One cyclic column in ordinary water. It is to take less than 5 ms on one core with 20 stages. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = {"-XX:ActiveProcessorCount=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ColumnBenchmark {

    private static final double HARDNESS_MG_PER_L = 300;
    private static final double SODIUM_EQUIVALENTS_PER_LITRE = 0.001;

    @Param({"15", "20"})
    public int stages;

    @Param({"6", "8", "10", "15"})
    public double poundsPerCubicFoot;

    @Param({"CO_CURRENT", "COUNTER_CURRENT"})
    public Brining.Direction direction;

    private Resin resin;
    private FeedWater water;
    private Brining brining;

    @Setup
    public void prepare() {
        double hardness = HARDNESS_MG_PER_L / FeedWater.MG_PER_EQUIVALENT;
        resin = Resin.STANDARD.withStages(stages);
        water = new FeedWater(hardness * FeedWater.ASSUMED_CALCIUM_SHARE,
                hardness * (1 - FeedWater.ASSUMED_CALCIUM_SHARE), SODIUM_EQUIVALENTS_PER_LITRE, 0);
        brining = Brining.of(Salt.SODIUM_CHLORIDE, SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(poundsPerCubicFoot),
                direction);
        if (!(column() instanceof ColumnResult.Settled)) {
            throw new IllegalStateException("a column that gives up early is no measure");
        }
    }

    @Benchmark
    public ColumnResult column() {
        return CyclicColumn.of(resin, water, brining, CyclicColumn.DEFAULT_END_POINT_MG_PER_L);
    }
}
