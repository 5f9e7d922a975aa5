// SPDX-License-Identifier: Apache-2.0
package dev.brinebook;

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

/**
 * A million divisions, each waiting for the one before: what this machine needs for the arithmetic that a column is made
 * of. The time of a column over this time compares from machine to machine.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = {"-XX:ActiveProcessorCount=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ReferenceBenchmark {

    private static final int DIVISIONS = 1_000_000;

    private double start = 1;

    /** The continued fraction of the golden ratio. */
    @Benchmark
    public double millionDivisions() {
        double x = start;
        for (int n = 0; n < DIVISIONS; n++) {
            x = 1 / (1 + x);
        }
        return x;
    }
}
