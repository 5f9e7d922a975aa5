// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.source.Sources;
import dev.brinebook.source.Table;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PrintedFormTest {

    private static final String FORMS = "/water/report/published-forms.csv";

    static ReportUnit unit(String symbol) {
        return Arrays.stream(ReportUnit.values()).filter(unit -> unit.symbol().equals(symbol)).findFirst().orElseThrow();
    }

    @ParameterizedTest
    @CsvFileSource(resources = FORMS, useHeadersInDisplayName = true)
    void isNormalisedAsPublished(String parameter, String form, String symbol, String expected, String tolerance) {
        PrintedForm printed = PrintedForm.of(Parameter.named(parameter), form == null ? null
                : ReportForm.valueOf(Parameter.constant(form)), unit(symbol)).orElseThrow();
        Printed.assertAgrees(expected, tolerance, printed.normalised(1, unit(symbol)));
    }

    @Test
    void tablesAreWhole() {
        assertEquals(49, Rows.in(FORMS));
        for (String[] row : Table.read("/water/report-forms.csv", '|', 6)) {
            assertNotNull(Sources.get(row[5]));
        }
    }

    @ParameterizedTest
    @EnumSource(Parameter.class)
    void isFirstInTheFormThatIsCalculatedWith(Parameter parameter) {
        PrintedForm first = PrintedForm.of(parameter).get(0);
        assertEquals(1, first.factor(), parameter + "");
        assertTrue(first.takes(parameter.unit()));
        assertEquals(first, PrintedForm.of(parameter, null, parameter.unit()).orElseThrow());
        assertTrue(parameter.usualLow() < parameter.usualHigh() && parameter.usualHigh() < parameter.highest());
    }

    /** Units that say nothing of a parameter. */
    @ParameterizedTest
    @CsvSource({"nitrate, , uS/cm", "ph, , mg/L", "sodium, asNitrogen, mg/L", "lead, , mmol/L", "silica, , meq/L", "calcium, itself, gpg",
        "hardness, , NTU", "turbidity, , mg/L"})
    void refusesUnitsOfAnotherKind(String parameter, String form, String symbol) {
        assertEquals(Optional.empty(), PrintedForm.of(Parameter.named(parameter), form == null ? null
                : ReportForm.valueOf(Parameter.constant(form)), unit(symbol)));
    }

    /** A value without a label may mean either of two forms. */
    @Test
    void asksForTheFormOfWhatIsPrintedInTwo() {
        assertTrue(PrintedForm.isAmbiguous(Parameter.NITRATE, ReportUnit.MG_PER_L));
        assertTrue(PrintedForm.isAmbiguous(Parameter.CALCIUM, ReportUnit.PPM));
        assertTrue(PrintedForm.isAmbiguous(Parameter.ALKALINITY, ReportUnit.MG_PER_L));
        assertTrue(PrintedForm.isAmbiguous(Parameter.DISSOLVED_SOLIDS, ReportUnit.PPM));
        assertFalse(PrintedForm.isAmbiguous(Parameter.NITRATE, ReportUnit.MEQ_PER_L));
        assertFalse(PrintedForm.isAmbiguous(Parameter.FLUORIDE, ReportUnit.MG_PER_L));
        assertFalse(PrintedForm.isAmbiguous(Parameter.HARDNESS, ReportUnit.MG_PER_L));
    }

    @Test
    void convertsTemperaturesWithTheirZero() {
        assertEquals(10, PrintedForm.of(Parameter.TEMPERATURE, null, ReportUnit.FAHRENHEIT).orElseThrow()
                .normalised(50, ReportUnit.FAHRENHEIT), 1e-12);
        assertEquals(50, ReportUnit.FAHRENHEIT.fromBase(10), 1e-12);
        assertEquals(Parameter.CONDUCTIVITY, PrintedForm.of(Parameter.DISSOLVED_SOLIDS, ReportForm.METER_SCALE_500, ReportUnit.PPM)
                .orElseThrow().becomes());
    }
}
