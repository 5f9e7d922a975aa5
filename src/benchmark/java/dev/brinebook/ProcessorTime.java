// SPDX-License-Identifier: Apache-2.0
package dev.brinebook;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.ScalarResult;

/** Processor time of the whole virtual machine for each call: unlike the clock, it does not count waiting for a core. */
public final class ProcessorTime implements InternalProfiler {

    private static final double NANOSECONDS_PER_MILLISECOND = 1e6;

    private final OperatingSystemMXBean machine =
            ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
    private long nanosecondsBefore;

    @Override
    public String getDescription() {
        return "processor time of a call";
    }

    @Override
    public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
        nanosecondsBefore = machine.getProcessCpuTime();
    }

    @Override
    public Collection<ScalarResult> afterIteration(BenchmarkParams benchmark, IterationParams iteration,
            IterationResult result) {
        double milliseconds = (machine.getProcessCpuTime() - nanosecondsBefore) / NANOSECONDS_PER_MILLISECOND;
        return List.of(new ScalarResult("processor", milliseconds / result.getMetadata().getAllOps(), "ms/op",
                AggregationPolicy.AVG));
    }
}
