// SPDX-License-Identifier: Apache-2.0
package dev.brinebook;

import dev.brinebook.guard.OptionalResult;
import dev.brinebook.household.ChangePoint;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Days;
import dev.brinebook.household.GammaFit;
import dev.brinebook.household.HourlyProfile;
import dev.brinebook.household.Trend;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import dev.brinebook.payback.CashFlows;
import dev.brinebook.payback.Payback;
import dev.brinebook.payback.RateOfReturn;
import dev.brinebook.payback.WholeBags;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.randomness.LatinHypercube;
import dev.brinebook.randomness.RandomStream;
import dev.brinebook.randomness.RankCorrelation;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.resin.Backwash;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.PressureDrop;
import dev.brinebook.resin.ResinBead;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import dev.brinebook.water.CompensatedHardness;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.water.WaterProperties;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Formulas one by one, on arguments that change from call to call where one remembers the last. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(value = 1, jvmArgsAppend = {"-XX:ActiveProcessorCount=1", "-XX:+UseSerialGC"})
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class FormulaBenchmark {

    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);

    private final UseModel model = new UseModel(WeekdayMeans.everyDay(900), DayVariation.FOUR_OR_MORE_PERSONS);
    private final double[] useLitres = useLitres();
    private final double[] flows = {-420, 90, 92, 94, 96, 98, 100, 102, 104, 106, 108};
    private final ResinBed bed = new ResinBed(42.5, 0.254);
    private final RandomStream stream = new RandomStream(1, 1);
    private int asked;

    private double[] useLitres() {
        Days days = model.typicalDays(FIRST, Days.PER_YEAR, 1);
        return IntStream.range(0, days.size()).mapToDouble(days::useLitres).toArray();
    }

    /** A number a little above 1, another each time. */
    private double another() {
        asked = (asked + 1) % 1_000;
        return 1 + asked / 10_000.0;
    }

    @Benchmark
    public double hardnessToBase() {
        return HardnessUnit.GPG.toBase(20 * another());
    }

    @Benchmark
    public BigDecimal roundedAnswer() {
        return Rounding.answer(26.96 * another());
    }

    @Benchmark
    public CompensatedHardness compensatedHardness() {
        return CompensatedHardness.of(376 * another(), 1.2, 0.08, CompensationFactors.ofGpg(4, 2));
    }

    @Benchmark
    public WaterProperties waterProperties() {
        return WaterProperties.at(11 * another());
    }

    @Benchmark
    public double gammaQuantile() {
        return DayVariation.gammaQuantile(0.4 * another(), 0.95);
    }

    @Benchmark
    public double shareOfDaysBelow() {
        return DayVariation.shareOfDaysBelow(0.4, 1.5 * another());
    }

    @Benchmark
    public Days typicalYear() {
        return model.typicalDays(FIRST, Days.PER_YEAR, asked++);
    }

    @Benchmark
    public double hourOfUse() {
        return HourlyProfile.dayShareAt(another() - 1);
    }

    @Benchmark
    public OptionalResult gammaShape() {
        return GammaFit.shape(useLitres);
    }

    @Benchmark
    public ChangePoint changePoint() {
        return ChangePoint.of(useLitres);
    }

    @Benchmark
    public Trend trend() {
        return Trend.of(IntStream.range(0, useLitres.length).toArray(), useLitres);
    }

    @Benchmark
    public double randomGamma() {
        return stream.nextGamma(6.25);
    }

    @Benchmark
    public LatinHypercube latinHypercube() {
        return LatinHypercube.of(6, 250, asked++);
    }

    @Benchmark
    public double rankCorrelation() {
        return RankCorrelation.of(useLitres, useLitres);
    }

    @Benchmark
    public OptionalResult bedExpansion() {
        return Backwash.expansionShare(ResinBead.DEFAULT, 15, 11 * another());
    }

    @Benchmark
    public double pressureDrop() {
        return PressureDrop.pascals(bed, 20 * another(), 11);
    }

    @Benchmark
    public double flowAtAPressureDrop() {
        return PressureDrop.flowLitresPerMinute(bed, 30_000 * another(), 11);
    }

    @Benchmark
    public double highestTableDose() {
        return CapacityTable.maxSaltDoseGramsPerLitre(Salt.SODIUM_CHLORIDE);
    }

    @Benchmark
    public double brineRefill() {
        return CycleDesign.refillLitres(Salt.SODIUM_CHLORIDE, 5_000 * another(), 15);
    }

    @Benchmark
    public double netPresentValue() {
        return CashFlows.netPresentValue(0.03 * another(), flows);
    }

    @Benchmark
    public OptionalResult discountedPayback() {
        return Payback.discountedYears(420 * another(), 0.03, 90, 92, 94, 96, 98, 100, 102, 104, 106, 108);
    }

    @Benchmark
    public RateOfReturn rateOfReturn() {
        flows[0] = -420 * another();
        return RateOfReturn.of(flows);
    }

    @Benchmark
    public long[] wholeBags() {
        return WholeBags.boughtPerYear(577 * another(), 18.14, 4, 10);
    }
}
