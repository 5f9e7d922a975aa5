// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.text.Localizable;
import dev.brinebook.water.report.PrintedResult.Qualifier;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What sampling and other reports say of results: of how much use they are. Source: [NPDWR] for first draw and times, [OWN-ASSUMPTION] for
 * copied results.
 */
public enum ReportNote implements Localizable {
    /** Left out of the calculation. */
    NOT_VALID(lines -> of(lines, PrintedResult::isInvalid)),
    TESTED_LATE(lines -> of(lines, line -> line.isTestedLate() && !line.isInvalid())),
    /** Metals of pipes and taps in water that stood there. */
    FIRST_DRAW_OF_PIPES(lines -> of(lines, line -> isFirstDraw(line) && WaterReport.OF_PIPES.contains(line.parameter()))),
    /** Metals of the source, to which water that stood adds rust of the pipe. */
    FIRST_DRAW_OF_SOURCE(lines -> of(lines, line -> isFirstDraw(line) && isOfSource(line.parameter()))),
    /** Several tests of one thing that scatter more than they may; those of the hardness have an answer of their own. */
    TESTS_DISAGREE(lines -> WaterReport.of(lines).contradicting()),
    /** Drops are counted up to the one that turns the colour: half a drop too many, on average. */
    DROPS_COUNTED_UP(lines -> of(lines, line -> line.testing().method() == TestMethod.DROPS && line.testing().expanded().isEmpty())),
    /** Ions of more than one day: their charges need not balance. */
    SEVERAL_DATES(ReportNote::ionsOfSeveralDates),
    /** The same cations to the last digit in two reports. */
    COPIED_CATIONS(ReportNote::copiedCations);

    private static final Set<Parameter> SOURCE_METALS = EnumSet.of(Parameter.IRON, Parameter.IRON_DISSOLVED, Parameter.MANGANESE,
            Parameter.MANGANESE_DISSOLVED);
    private static final Set<Parameter> CATIONS = EnumSet.of(Parameter.CALCIUM, Parameter.MAGNESIUM, Parameter.SODIUM,
            Parameter.POTASSIUM);
    /** So many cations are not equal by chance, where each has at least three digits. */
    private static final int ASSUMED_LEAST_COPIED = 3;
    private static final double ASSUMED_LEAST_STEPS = 100;

    private final Function<List<PrintedResult>, Set<Parameter>> concerned;

    ReportNote(Function<List<PrintedResult>, Set<Parameter>> concerned) {
        this.concerned = concerned;
    }

    /** The notes on the lines of one report or several, each with the parameters that it is about. */
    public static Map<ReportNote, Set<Parameter>> of(List<PrintedResult> lines) {
        Map<ReportNote, Set<Parameter>> notes = new EnumMap<>(ReportNote.class);
        for (ReportNote note : values()) {
            Set<Parameter> parameters = note.concerned.apply(lines);
            if (!parameters.isEmpty()) {
                notes.put(note, parameters);
            }
        }
        return Collections.unmodifiableMap(notes);
    }

    private static Set<Parameter> of(List<PrintedResult> lines, Predicate<PrintedResult> wanted) {
        return lines.stream().filter(wanted).map(PrintedResult::parameter)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Parameter.class)));
    }

    private static boolean isOfSource(Parameter parameter) {
        return SOURCE_METALS.contains(parameter);
    }

    private static boolean isFirstDraw(PrintedResult line) {
        return line.sampling().firstDraw();
    }

    private static Set<Parameter> ionsOfSeveralDates(List<PrintedResult> lines) {
        List<PrintedResult> ions = lines.stream().filter(line -> isIon(line.parameter()) && line.sampling().origin().date().isPresent())
                .toList();
        long dates = ions.stream().map(line -> line.sampling().origin().date()).distinct().count();
        return dates > 1 ? of(ions, line -> true) : Set.of();
    }

    private static boolean isIon(Parameter parameter) {
        return parameter.ion().isPresent() || parameter == Parameter.ALKALINITY;
    }

    private static Set<Parameter> copiedCations(List<PrintedResult> lines) {
        Set<Parameter> copied = EnumSet.noneOf(Parameter.class);
        int[] reports = lines.stream().mapToInt(line -> line.sampling().origin().report()).distinct().toArray();
        for (int one : reports) {
            Arrays.stream(reports).filter(other -> other > one).mapToObj(other -> equalCations(lines, one, other))
                    .filter(equal -> equal.size() >= ASSUMED_LEAST_COPIED).forEach(copied::addAll);
        }
        return copied;
    }

    private static Set<Parameter> equalCations(List<PrintedResult> lines, int one, int other) {
        List<PrintedResult> ofOther = lines.stream().filter(line -> line.sampling().origin().report() == other).toList();
        return of(lines, line -> line.sampling().origin().report() == one && CATIONS.contains(line.parameter()) && hasThreeDigits(line)
                && ofOther.stream().anyMatch(same -> same.parameter() == line.parameter() && isEqual(same.reading(), line.reading())));
    }

    private static boolean isEqual(PrintedResult.Reading one, PrintedResult.Reading other) {
        return one.value() == other.value() && one.unit() == other.unit() && Objects.equals(one.form(), other.form())
                && one.qualifier() == Qualifier.EQUAL && other.qualifier() == Qualifier.EQUAL;
    }

    private static boolean hasThreeDigits(PrintedResult line) {
        return line.testing().step() > 0 && line.reading().value() >= ASSUMED_LEAST_STEPS * line.testing().step() * (1 - 1e-9);
    }

    @Override
    public String textId() {
        return Localizable.idOf("reportNote", this);
    }
}
