// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.source.Table;
import dev.brinebook.text.Localizable;
import dev.brinebook.water.WaterAnalysis.Supply;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A test to order, how to sample for it, and what it would change.
 *
 * @param parameter what to test
 * @param changesShare probability that its result changes the verdict
 * @param tested whether it was tested already, and should be tested better
 * @param asked whether it answers a reason that was given, and was not tested yet
 * @param order how it is ordered
 */
public record NextTest(Parameter parameter, double changesShare, boolean tested, boolean asked, Ordering order) {

    /** Values that each test is tried with: the middles of equally likely ranges. */
    static final int TRIED_VALUES = 200;
    /** A test that changes the verdict less often is not worth ordering for it. */
    public static final double ASSUMED_LEAST_SHARE = 0.01;
    private static final Map<Parameter, Ordering> ORDERINGS = read();

    /** What a sample is taken in. */
    public enum Bottle implements Localizable {
        /** Tested at the tap, at once. */
        ON_SITE,
        /** Sterile, with thiosulfate, kept below 10 °C; the tap disinfected, its aerator off. */
        STERILE, COOL,
        /** With nitric acid, which is why the bottle is not rinsed. */
        NITRIC_ACID,
        /** Filtered at the tap, then with nitric acid. */
        FILTERED,
        /** The first litre after six hours without use. */
        FIRST_DRAW;

        @Override
        public String textId() {
            return Localizable.idOf("bottle", this);
        }
    }

    /**
     * How a test is ordered.
     *
     * @param costClass 1 for a kit or a meter, 2 for a laboratory, 3 for trace metals
     * @param bottle what the sample is taken in
     * @param hours within how many hours it must be tested
     */
    public record Ordering(int costClass, Bottle bottle, double hours) {
    }

    private static Map<Parameter, Ordering> read() {
        Map<Parameter, Ordering> orderings = new EnumMap<>(Parameter.class);
        for (String[] row : Table.read("/water/report-tests.csv", '|', 4)) {
            orderings.put(Parameter.named(row[0]), new Ordering(Integer.parseInt(row[1]), Bottle.valueOf(Parameter.constant(row[2])),
                    Double.parseDouble(row[3])));
        }
        return Collections.unmodifiableMap(orderings);
    }

    /**
     * Tests by how often their result changes the verdict, that which changes it most often first; among equals the cheaper.
     *
     * <p>Each is tried alone, with what else is known as it is, over everything that it may find: the spread of its own uncertainty
     * where it was tested, else that of waters of the supply.
     *
     * @param sample the water, its hardness joined of all tests; one without a hardness is taken to have the usual one
     * @param reasons why it is tested: the tests that answer them and were not made come before all others
     */
    public static List<NextTest> ranked(Sample sample, Supply supply, Set<TestReason> reasons) {
        Sample known = withHardness(sample, supply);
        ReportAdvice now = ReportAdvice.of(known, supply);
        List<NextTest> tests = new ArrayList<>();
        ORDERINGS.forEach((parameter, order) -> {
            boolean tested = sample.has(parameter);
            boolean asked = !tested && !isAnswered(parameter, sample)
                    && reasons.stream().anyMatch(reason -> reason.tests().contains(parameter));
            Optional<Prior> doubt = doubt(parameter, sample, supply);
            if (asked || doubt.isPresent()) {
                tests.add(new NextTest(parameter, doubt.map(of -> changes(known, parameter, of, supply, now)).orElse(0.0), tested,
                        asked, order));
            }
        });
        return tests.stream().sorted(Comparator.comparing(NextTest::asked).reversed()
                .thenComparing(Comparator.comparingDouble(NextTest::changesShare).reversed())
                .thenComparingInt(test -> test.order().costClass()).thenComparing(NextTest::parameter)).toList();
    }

    private static double changes(Sample known, Parameter parameter, Prior doubt, Supply supply, ReportAdvice now) {
        int changes = 0;
        for (int i = 0; i < TRIED_VALUES; i++) {
            changes += ReportAdvice.of(found(known, parameter, doubt.quantile((i + 0.5) / TRIED_VALUES)), supply).equals(now) ? 0 : 1;
        }
        return (double) changes / TRIED_VALUES;
    }

    /** Whether it is worth ordering: it answers a reason that was given, or it may change the verdict. */
    public boolean isWorthwhile() {
        return asked || changesShare >= ASSUMED_LEAST_SHARE;
    }

    /** Hours within which a sample must be tested; empty where no test of the parameter is ever ordered. */
    static OptionalDouble holdingHours(Parameter parameter) {
        Ordering order = ORDERINGS.get(parameter);
        return order == null ? OptionalDouble.empty() : OptionalDouble.of(order.hours());
    }

    /** The sample with the usual hardness of the supply where none was tested. */
    static Sample withHardness(Sample sample, Supply supply) {
        double hardness = sample.hardnessToGoByMgPerL().orElse(Prior.untested(supply).get(Parameter.HARDNESS).median());
        return sample.has(Parameter.HARDNESS) ? sample : sample.with(Parameter.HARDNESS, new Estimate(hardness, 0));
    }

    /** E. coli are coliform bacteria: there are none where no coliform was found. */
    private static boolean isAnswered(Parameter parameter, Sample sample) {
        return parameter == Parameter.E_COLI && !sample.has(parameter) && sample.has(Parameter.COLIFORM)
                && sample.orZero(Parameter.COLIFORM) == 0;
    }

    /** What a test may find; nothing where there is no doubt left, or the test says nothing by itself. */
    static Optional<Prior> doubt(Parameter parameter, Sample sample, Supply supply) {
        Estimate known = sample.estimates().get(parameter);
        if (isAnswered(parameter, sample)) {
            return Optional.empty();
        }
        if (known != null) {
            return known.isExact() ? Optional.empty() : Optional.of(Prior.tested(known));
        }
        if (parameter == Parameter.IRON_DISSOLVED) {
            return sample.has(Parameter.IRON) ? Optional.of(ofAll(sample.orZero(Parameter.IRON))) : Optional.empty();
        }
        return Optional.ofNullable(Prior.untested(supply).get(parameter));
    }

    /** Of iron that nobody looked at, any share may be dissolved. */
    private static Prior ofAll(double ironMgPerL) {
        return new Prior(0, ironMgPerL / 2, ironMgPerL / Math.sqrt(12), true);
    }

    /** The sample with what a test found, as far as any report can state it. */
    static Sample found(Sample known, Parameter parameter, double value) {
        return known.with(parameter, new Estimate(Math.min(value, parameter.highest()), 0));
    }
}
