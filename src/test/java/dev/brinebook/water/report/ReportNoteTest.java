// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.water.report.PrintedResult.Origin;
import dev.brinebook.water.report.PrintedResult.Qualifier;
import dev.brinebook.water.report.PrintedResult.Tap;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReportNoteTest {

    private static PrintedResult line(Parameter parameter, double value, double digit, Qualifier qualifier, boolean firstDraw,
            Origin origin) {
        return new PrintedResult(parameter, new PrintedResult.Reading(value, parameter.unit(), null, qualifier),
                new PrintedResult.Testing(TestMethod.LABORATORY, OptionalDouble.empty(), digit),
                new PrintedResult.Sampling(Tap.RAW, false, firstDraw, origin));
    }

    private static Origin report(int number) {
        return new Origin(number, Optional.empty(), OptionalDouble.empty());
    }

    /** Calcium, magnesium, sodium and potassium with their last digits. */
    private static List<PrintedResult> cations(int report, double... valuesAndDigits) {
        List<PrintedResult> lines = new ArrayList<>();
        Parameter[] cations = {Parameter.CALCIUM, Parameter.MAGNESIUM, Parameter.SODIUM, Parameter.POTASSIUM};
        for (int i = 0; i < cations.length; i++) {
            lines.add(line(cations[i], valuesAndDigits[2 * i], valuesAndDigits[2 * i + 1], Qualifier.EQUAL, false, report(report)));
        }
        return lines;
    }

    private static Set<Parameter> copied(List<PrintedResult> one, List<PrintedResult> other) {
        List<PrintedResult> lines = new ArrayList<>(one);
        lines.addAll(other);
        return ReportNote.of(lines).getOrDefault(ReportNote.COPIED_CATIONS, Set.of());
    }

    /** Two wells of the USGS network in Idaho, of 19 and 20 November 2018 (public domain); the third row is invented. */
    @Test
    void cationsOfTwoWellsThatAreEqualToThreeDigitsAreFound() {
        List<PrintedResult> one = cations(1, 36.1, 0.1, 12.6, 0.1, 7.40, 0.01, 2.27, 0.01);
        List<PrintedResult> other = cations(2, 36.1, 0.1, 12.6, 0.1, 7.35, 0.01, 2.27, 0.01);
        assertEquals(Set.of(Parameter.CALCIUM, Parameter.MAGNESIUM, Parameter.POTASSIUM), copied(one, other));
        assertEquals(Set.of(), copied(one, cations(2, 66.1, 0.1, 22.1, 0.1, 17.5, 0.1, 2.27, 0.01)), "one is equal by chance");
        assertEquals(Set.of(), copied(one, cations(1, 36.1, 0.1, 12.6, 0.1, 7.35, 0.01, 2.27, 0.01)), "one report");
        assertEquals(Set.of(), copied(cations(1, 36, 1, 13, 1, 7, 1, 2, 1), cations(2, 36, 1, 13, 1, 7, 1, 2, 1)), "two digits");
    }

    /** 30 hours for bacteria, 48 for nitrate (40 CFR 141.21 and 136.3). Bacteria that are found are found, however old the sample is. */
    @ParameterizedTest
    @CsvSource({"COLIFORM, 0, ABSENT, 29, ", "COLIFORM, 0, ABSENT, 31, NOT_VALID", "E_COLI, 0, EQUAL, 31, NOT_VALID",
        "E_COLI, 1, BELOW, 31, NOT_VALID", "E_COLI, 0, PRESENT, 31, TESTED_LATE", "COLIFORM, 4, EQUAL, 31, TESTED_LATE",
        "COLIFORM, 0, INVALID, 2, NOT_VALID", "NITRATE, 4, EQUAL, 47, ", "NITRATE, 4, EQUAL, 49, TESTED_LATE",
        "ALKALINITY, 200, EQUAL, 335, ", "ALKALINITY, 200, EQUAL, 337, TESTED_LATE", "POTASSIUM, 2, EQUAL, 9000, "})
    void aSampleThatIsTooOldIsFound(Parameter parameter, double value, Qualifier qualifier, double hours, ReportNote note) {
        PrintedResult line = line(parameter, value, 1, qualifier, false, new Origin(1, Optional.empty(), OptionalDouble.of(hours)));
        assertEquals(note == null ? Map.of() : Map.of(note, Set.of(parameter)), ReportNote.of(List.of(line)));
        assertEquals(note == ReportNote.NOT_VALID ? List.of(line) : List.of(), WaterReport.of(List.of(line)).unread());
    }

    /** The lead and copper rule (40 CFR 141.86) judges the first litre; iron of the same litre is partly of the pipe. */
    @Test
    void waterThatStoodCountsForMetalsOfPipesAndFlushedWaterForAllElse() {
        List<PrintedResult> lines = List.of(line(Parameter.LEAD, 0.02, 0.001, Qualifier.EQUAL, true, Origin.UNKNOWN),
                line(Parameter.LEAD, 0.002, 0.001, Qualifier.EQUAL, false, Origin.UNKNOWN),
                line(Parameter.IRON, 1.2, 0.1, Qualifier.EQUAL, true, Origin.UNKNOWN),
                line(Parameter.IRON, 0.4, 0.1, Qualifier.EQUAL, false, Origin.UNKNOWN),
                line(Parameter.COPPER, 0.3, 0.1, Qualifier.EQUAL, false, Origin.UNKNOWN),
                line(Parameter.HARDNESS, 250, 1, Qualifier.EQUAL, true, Origin.UNKNOWN));
        Sample sample = WaterReport.of(lines).at(Tap.RAW);
        assertEquals(List.of(0.02, 0.4, 0.3, 250.0), List.of(sample.orZero(Parameter.LEAD), sample.orZero(Parameter.IRON),
                sample.orZero(Parameter.COPPER), sample.orZero(Parameter.HARDNESS)));
        assertEquals(Map.of(ReportNote.FIRST_DRAW_OF_PIPES, Set.of(Parameter.LEAD), ReportNote.FIRST_DRAW_OF_SOURCE,
                Set.of(Parameter.IRON)), ReportNote.of(lines));
    }

    @Test
    void ionsOfSeveralDaysAreFound() {
        Origin one = new Origin(1, Optional.of(LocalDate.of(2026, 3, 1)), OptionalDouble.empty());
        Origin other = new Origin(2, Optional.of(LocalDate.of(2026, 5, 1)), OptionalDouble.empty());
        PrintedResult calcium = line(Parameter.CALCIUM, 84, 1, Qualifier.EQUAL, false, one);
        assertEquals(Map.of(ReportNote.SEVERAL_DATES, Set.of(Parameter.CALCIUM, Parameter.ALKALINITY)),
                ReportNote.of(List.of(calcium, line(Parameter.ALKALINITY, 228, 1, Qualifier.EQUAL, false, other))));
        assertEquals(Map.of(), ReportNote.of(List.of(calcium, line(Parameter.IRON, 0.4, 0.1, Qualifier.EQUAL, false, other),
                line(Parameter.SULFATE, 12, 1, Qualifier.EQUAL, false, Origin.UNKNOWN))));
    }
}
