// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.WireNames;
import dev.brinebook.text.Message;
import dev.brinebook.water.report.Parameter;
import dev.brinebook.water.report.PrintedForm;
import dev.brinebook.water.report.PrintedResult;
import dev.brinebook.water.report.PrintedResult.Qualifier;
import dev.brinebook.water.report.PrintedResult.Tap;
import dev.brinebook.water.report.ReportForm;
import dev.brinebook.water.report.ReportUnit;
import dev.brinebook.water.report.TestMethod;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

@SchemaDescription("One result of a report, as it is printed.")
public record ReportResultRequest(
        @Property(value = "What was tested.", required = true, example = "\"nitrate\"") Parameter parameter,
        @Property(value = "The printed number. Omit it for notDetected, present, absent and invalid. A value that no water has is reported "
                + "in the answer.", min = -MAX_VALUE, max = MAX_VALUE, fallback = "0, where the qualifier stands for it", example = "5.2")
        BigDecimal value,
        @Property(value = "The printed unit.", fallback = "the unit that the parameter is calculated with", example = "\"mg/L\"")
        ReportUnit unit,
        @Property(value = "As what it is printed, such as nitrate as nitrogen.", fallback = "the usual form in that unit",
                example = "\"asNitrogen\"") ReportForm form,
        @Property(value = "What stands before the number or for it. With below the number is the detection limit.", defaultCode = "equal",
                example = "\"below\"") Qualifier qualifier,
        @Property(value = "How it was tested.", defaultCode = "unknown", example = "\"laboratory\"") TestMethod method,
        @Property(value = "Stated expanded uncertainty (k = 2), in the printed unit.", min = 0, aboveMin = true, max = MAX_VALUE,
                fallback = "by the method", example = "0.4") BigDecimal uncertainty,
        @Property(value = "Resolution of the test, in the printed unit: one drop, or the step between two blocks of a strip.", min = 0,
                aboveMin = true, max = MAX_VALUE, fallback = "the last digit printed; of drops and strips, by the method", example = "1")
        BigDecimal resolution,
        @Property(value = "Where the sample was taken.", defaultCode = "unknown", example = "\"raw\"") Tap tap,
        @Property(value = "Whether it was tested at the tap, at once.", defaultCode = "false", example = "false") Boolean onSite,
        @Property(value = "Whether the water had stood in the pipe for hours. Lead, copper and zinc are judged by such water, all else by "
                + "flushed water.", defaultCode = "false", example = "false") Boolean firstDraw,
        @Property(value = "Number of the report, where several are sent.", min = 1, max = MAX_REPORTS, defaultCode = "1", example = "2")
        Integer report,
        @Property(value = "Date of the sample.", fallback = "not known", example = "\"2026-03-01\"") LocalDate sampledOn,
        @Property(value = "Hours from taking the sample to its test. Bacteria that are not found after more than 30 hours say nothing.",
                min = 0, max = MAX_HOURS, unit = "hours", fallback = "in time", example = "26") BigDecimal hoursHeld)
        implements Checked {

    static final double MAX_VALUE = 1_000_000;
    static final int MAX_REPORTS = 20;
    static final double MAX_HOURS = 100_000;
    private static final Set<Qualifier> WITHOUT_NUMBER = Set.of(Qualifier.NOT_DETECTED, Qualifier.PRESENT, Qualifier.ABSENT,
            Qualifier.INVALID);

    @Override
    public void check(Violations at) {
        if (parameter == null || at.here()) {
            return;
        }
        if (value == null && !isWithoutNumber()) {
            at.add("value", Code.MISSING, Message.of("problem.waterReport.valueMissing"));
        }
        if (PrintedForm.of(parameter, form, usedUnit()).isEmpty()) {
            at.add(form == null ? "unit" : "form", Code.INCONSISTENT, Message.of("problem.waterReport.notPrintedIn",
                    WireNames.of(parameter), usedUnit().symbol(), form == null ? "none" : WireNames.of(form)));
        }
    }

    private boolean isWithoutNumber() {
        return qualifier != null && WITHOUT_NUMBER.contains(qualifier);
    }

    private ReportUnit usedUnit() {
        return unit == null ? parameter.unit() : unit;
    }

    PrintedResult toDomain() {
        TestMethod used = method == null ? TestMethod.UNKNOWN : method;
        boolean stepped = used == TestMethod.DROPS || used == TestMethod.STRIP;
        double step = resolution != null ? resolution.doubleValue() : value == null || stepped ? 0 : value.ulp().doubleValue();
        return new PrintedResult(parameter, new PrintedResult.Reading(value == null ? 0 : value.doubleValue(), usedUnit(), form,
                qualifier == null ? Qualifier.EQUAL : qualifier),
                new PrintedResult.Testing(used, uncertainty == null ? OptionalDouble.empty() : OptionalDouble.of(uncertainty.doubleValue()),
                        step),
                new PrintedResult.Sampling(tap == null ? Tap.UNKNOWN : tap, Boolean.TRUE.equals(onSite), Boolean.TRUE.equals(firstDraw),
                        new PrintedResult.Origin(report == null ? 1 : report, Optional.ofNullable(sampledOn), hoursHeld == null
                                ? OptionalDouble.empty() : OptionalDouble.of(hoursHeld.doubleValue()))));
    }
}
