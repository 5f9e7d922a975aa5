// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.water.report.PrintedResult.Tap;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * A report, or several of the same water, with each line in one form.
 *
 * @param results lines that can be calculated with, in their order
 * @param impossible lines with a value that no water has: reported, not calculated with
 * @param unread lines that state no value: not detected without a limit, found without a number, or of an invalid sample
 */
public record WaterReport(List<Measured> results, List<Measured> impossible, List<PrintedResult> unread) {

    /** What changes in the bottle: a test at the tap comes before one in a laboratory. Source: [USGS-QW-82-06]. */
    private static final Set<Parameter> BETTER_ON_SITE = Set.of(Parameter.PH, Parameter.ALKALINITY, Parameter.CONDUCTIVITY,
            Parameter.CARBON_DIOXIDE, Parameter.OXYGEN, Parameter.FREE_CHLORINE, Parameter.HYDROGEN_SULFIDE);
    /** What comes from pipes and taps, and is judged by water that stood in them. Source: [NPDWR], action levels of lead and copper. */
    static final Set<Parameter> OF_PIPES = Set.of(Parameter.LEAD, Parameter.COPPER, Parameter.ZINC);

    /** Metals that foul the resin. */
    private static final Set<Parameter> FOULING = EnumSet.of(Parameter.IRON, Parameter.IRON_DISSOLVED, Parameter.MANGANESE,
            Parameter.MANGANESE_DISSOLVED);

    public WaterReport {
        results = List.copyOf(results);
        impossible = List.copyOf(impossible);
        unread = List.copyOf(unread);
    }

    /**
     * The lines read.
     *
     * @throws IllegalArgumentException for a line whose parameter is not printed in its form and unit
     */
    public static WaterReport of(List<PrintedResult> lines) {
        List<Measured> results = new ArrayList<>();
        List<Measured> impossible = new ArrayList<>();
        List<PrintedResult> unread = new ArrayList<>();
        for (PrintedResult line : lines) {
            PrintedForm form = PrintedForm.of(line.parameter(), line.reading().form(), line.reading().unit()).orElseThrow(
                    () -> new IllegalArgumentException(line.parameter() + " is not printed in " + line.reading().unit().symbol()));
            Measured measured = Measured.of(line, form);
            if (line.isWithoutValue() || line.isInvalid()) {
                unread.add(line);
            } else {
                (measured.isImpossible() ? impossible : results).add(measured);
            }
        }
        return new WaterReport(results, impossible, unread);
    }

    /** The water of a tap; one that is not known is taken as raw. */
    public Sample at(Tap tap) {
        Map<Parameter, Estimate> estimates = new EnumMap<>(Parameter.class);
        for (Parameter parameter : Parameter.values()) {
            List<Measured> tests = tests(parameter, tap);
            if (!tests.isEmpty()) {
                estimates.put(parameter, joined(parameter, tests));
            }
        }
        return new Sample(estimates);
    }

    /**
     * The tests of a parameter that count: those at the tap where they are better; of metals of pipes those of water that stood, of all
     * else those of flushed water; and those with a value; each where there are any.
     */
    List<Measured> tests(Parameter parameter, Tap tap) {
        List<Measured> tests = results.stream().filter(result -> result.parameter() == parameter)
                .filter(result -> (result.printed().sampling().tap() == Tap.SOFTENED) == (tap == Tap.SOFTENED)).toList();
        List<Measured> better = BETTER_ON_SITE.contains(parameter) ? preferred(tests, test -> test.printed().sampling().onSite()) : tests;
        boolean stood = OF_PIPES.contains(parameter);
        return preferred(preferred(better, test -> test.printed().sampling().firstDraw() == stood), Measured::isValue);
    }

    /** Parameters other than the hardness whose tests at one tap contradict each other. */
    Set<Parameter> contradicting() {
        return Arrays.stream(Parameter.values()).filter(parameter -> parameter != Parameter.HARDNESS)
                .filter(parameter -> isInConflict(tests(parameter, Tap.RAW)) || isInConflict(tests(parameter, Tap.SOFTENED)))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Parameter.class)));
    }

    private static boolean isInConflict(List<Measured> tests) {
        List<Estimate> estimates = tests.stream().map(Measured::estimate).filter(estimate -> !estimate.isExact()).toList();
        return estimates.size() > 1 && WeightedMean.of(estimates).isConflict();
    }

    /** Whether the hardness of a tap was only tested with kits, so that nobody summed it from calcium and magnesium. */
    public boolean isHardnessOfKits(Tap tap) {
        return tests(Parameter.HARDNESS, tap).stream().allMatch(test -> test.printed().testing().method().isKit());
    }

    private static List<Measured> preferred(List<Measured> tests, Predicate<Measured> wanted) {
        List<Measured> preferred = tests.stream().filter(wanted).toList();
        return preferred.isEmpty() ? tests : preferred;
    }

    /**
     * The mean of several tests; the first that is exact, if one is. Tests of a metal that contradict each other have no mean: the highest
     * counts, as it may foul the resin.
     */
    private static Estimate joined(Parameter parameter, List<Measured> tests) {
        List<Estimate> estimates = tests.stream().map(Measured::estimate).toList();
        Optional<Estimate> exact = estimates.stream().filter(Estimate::isExact).findFirst();
        if (exact.isPresent() || estimates.size() == 1) {
            return exact.orElse(estimates.get(0));
        }
        WeightedMean mean = WeightedMean.of(estimates);
        return mean.isConflict() && FOULING.contains(parameter) ? highest(estimates) : mean.estimate();
    }

    /** The highest of several, which may as well be any between the lowest and it. Source: [GUM] 4.3.7. */
    private static Estimate highest(List<Estimate> tests) {
        Estimate high = tests.stream().max(Comparator.comparingDouble(Estimate::value)).orElseThrow();
        double low = tests.stream().mapToDouble(Estimate::value).min().orElseThrow();
        return new Estimate(high.value(), StrictMath.hypot(high.standardUncertainty(), (high.value() - low) / Math.sqrt(12)));
    }
}
