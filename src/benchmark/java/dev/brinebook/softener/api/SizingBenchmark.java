package dev.brinebook.softener.api;

import dev.brinebook.household.api.HouseholdRequest;
import dev.brinebook.quantity.ConcentrationUnit;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.api.ConcentrationQuantity;
import dev.brinebook.quantity.api.HardnessQuantity;
import dev.brinebook.water.api.WaterRequest;
import java.math.BigDecimal;
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

/** A sizing among the standard tanks by the column, whose doses are searched: with and without columns remembered. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = {"-XX:ActiveProcessorCount=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class SizingBenchmark {

    private static final int HARDNESS_TENTHS_OF_MICROGRAMS_PER_LITRE = 3_000_000;

    private final SizingRequest same = request(HARDNESS_TENTHS_OF_MICROGRAMS_PER_LITRE);
    private int asked;

    /** Each request a ten-thousandth of a milligram harder: the same work, and no column that was worked out before. */
    @Benchmark
    public SizingAnswer coldCache() {
        asked++;
        return SizeSoftener.OPERATION.calculate().apply(request(HARDNESS_TENTHS_OF_MICROGRAMS_PER_LITRE + asked));
    }

    @Benchmark
    public SizingAnswer warmCache() {
        return SizeSoftener.OPERATION.calculate().apply(same);
    }

    private static SizingRequest request(int hardnessTenthsOfMicrogramsPerLitre) {
        HardnessQuantity hardness = new HardnessQuantity(BigDecimal.valueOf(hardnessTenthsOfMicrogramsPerLitre, 4),
                HardnessUnit.MG_PER_L);
        ConcentrationQuantity solids = new ConcentrationQuantity(BigDecimal.valueOf(410), ConcentrationUnit.MG_PER_L);
        WaterRequest water = new WaterRequest(hardness, null, null, null, null, null, null, null, null, null, solids, null,
                null, null, null, null, null, null);
        HouseholdRequest household = new HouseholdRequest(4, null, null, null, null, null, null, null, null, null, null,
                null, null, null, null, null);
        return new SizingRequest(water, household, null, null, null, null, null, null, null);
    }
}
