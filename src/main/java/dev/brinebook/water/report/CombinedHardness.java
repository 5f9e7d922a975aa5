// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.water.Hardness;
import dev.brinebook.water.report.PrintedResult.Tap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All tests of hardness of a water, joined to one with its interval.
 *
 * @param tests what was joined, mg/L as CaCO3: tests, and the sum of calcium and magnesium
 * @param mean their mean
 * @param estimate the mean with everything that makes it uncertain
 */
public record CombinedHardness(List<Estimate> tests, WeightedMean mean, Estimate estimate) {

    /** Within this of the sum of ions, a stated hardness was summed from them: it is no test of its own. */
    private static final double ASSUMED_SAME_SHARE = 0.01;
    private static final double COVERAGE = 2;

    public CombinedHardness {
        tests = List.copyOf(tests);
    }

    /** The hardness of a tap; empty where no test states a value. */
    public static Optional<CombinedHardness> of(WaterReport report, Tap tap) {
        Optional<Estimate> ions = ofIons(report.at(tap));
        List<Measured> stated = report.tests(Parameter.HARDNESS, tap).stream().filter(Measured::isValue)
                .filter(test -> test.estimate().standardUncertainty() > 0).filter(test -> !isSum(test, ions)).toList();
        List<Estimate> tests = new ArrayList<>();
        ions.filter(sum -> sum.standardUncertainty() > 0).ifPresent(tests::add);
        stated.stream().filter(test -> !sharesDrops(test)).map(CombinedHardness::between).forEach(tests::add);
        List<Measured> drops = stated.stream().filter(CombinedHardness::sharesDrops).toList();
        if (!drops.isEmpty()) {
            tests.add(WeightedMean.of(drops.stream().map(test -> withoutDropSize(between(test))).toList())
                    .sharing(TestMethod.ASSUMED_DROP_SIZE_SHARE));
        }
        if (tests.isEmpty()) {
            return Optional.empty();
        }
        WeightedMean mean = WeightedMean.of(tests);
        return Optional.of(new CombinedHardness(tests, mean, mean.estimate()));
    }

    /** A hardness below a limit lies anywhere from none to the limit: half of it, not none. Source: [GUM] 4.3.7. */
    private static Estimate between(Measured test) {
        boolean below = test.printed().reading().qualifier() == PrintedResult.Qualifier.BELOW;
        return below ? new Estimate(test.limit().orElseThrow() / 2, test.estimate().standardUncertainty() / 2) : test.estimate();
    }

    /** Hardness of calcium and magnesium with its uncertainty, by [SM2340B]. */
    private static Optional<Estimate> ofIons(Sample sample) {
        return sample.ionHardnessMgPerL().isEmpty() ? Optional.empty() : Optional.of(new Estimate(sample.ionHardnessMgPerL().getAsDouble(),
                StrictMath.hypot(Hardness.fromIonsMgPerL(uncertainty(sample, Parameter.CALCIUM), 0),
                        Hardness.fromIonsMgPerL(0, uncertainty(sample, Parameter.MAGNESIUM)))));
    }

    private static double uncertainty(Sample sample, Parameter parameter) {
        return sample.estimates().get(parameter).standardUncertainty();
    }

    private static boolean isSum(Measured test, Optional<Estimate> ions) {
        boolean laboratory = test.printed().testing().method() == TestMethod.LABORATORY
                || test.printed().testing().method() == TestMethod.UNKNOWN;
        return laboratory && ions.isPresent()
                && Math.abs(test.estimate().value() - ions.get().value()) <= ASSUMED_SAME_SHARE * ions.get().value();
    }

    /** Drops of which nothing better is stated: what they share is the size that a drop is assumed to have. */
    private static boolean sharesDrops(Measured test) {
        PrintedResult.Testing testing = test.printed().testing();
        return testing.method() == TestMethod.DROPS && testing.expanded().isEmpty();
    }

    private static Estimate withoutDropSize(Estimate test) {
        double size = TestMethod.ASSUMED_DROP_SIZE_SHARE * test.value();
        double all = test.standardUncertainty();
        return new Estimate(test.value(), Math.max(Measured.leastUncertainty(Parameter.HARDNESS),
                Math.sqrt(Math.max(0, (all - size) * (all + size)))));
    }

    /** Whether the tests contradict each other. */
    public boolean isConflict() {
        return mean.isConflict();
    }

    /** Expanded uncertainty, k = 2, mg/L as CaCO3. */
    public double expandedUncertaintyMgPerL() {
        return COVERAGE * estimate.standardUncertainty();
    }
}
