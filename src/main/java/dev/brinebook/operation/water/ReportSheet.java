// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.sheet.RecordSheet;
import dev.brinebook.sheet.RecordSheet.Line;
import dev.brinebook.sheet.RecordSheet.Section;
import dev.brinebook.sheet.Row;
import dev.brinebook.sheet.SheetCell;
import dev.brinebook.text.Message;
import dev.brinebook.water.report.ReportUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/** A checked water report as a sheet to print. */
final class ReportSheet {

    /** Tests on the sheet: those that most likely change the advice. */
    private static final int SHOWN_TESTS = 3;
    private static final int CASES = 20;
    private static final int PERCENT = 100;

    private ReportSheet() {
    }

    /** The forms, by what answers a request. */
    static List<AnswerForm<WaterReportRequest>> forms(Function<WaterReportRequest, WaterReportAnswer> answer) {
        return RecordSheet.forms("apartment", request -> of(answer.apply(request)),
                request -> HomeCountry.units(request.units(), request.country()) == AnswerUnits.METRIC);
    }

    static RecordSheet of(WaterReportAnswer answer) {
        return RecordSheet.of(Message.of("visit.sheet.report"), answer.summary(), answer.modelVersion(), List.of(
                Section.list("cautions", Message.of("sheetWords.pleaseKnow"), IntStream.range(0, answer.cautions().size())
                        .mapToObj(i -> Line.of("/cautions/" + i + "/message", answer.cautions().get(i).message())).toList()),
                Section.list("misfits", Message.of("visit.misfits"), misfits(answer)),
                Section.table("tests", Message.of("visit.orderNext"), List.of(Message.of("visit.field.parameter"),
                        Message.of("visit.changesHead"), Message.of("visit.howToSample")), tests(answer)),
                Section.table("limits", Message.of("visit.limitsMissed"), List.of(Message.of("visit.field.parameter"),
                        Message.of("visit.resultHead"), Message.of("visit.limitHead"), Message.of("visit.byHead")), limits(answer)),
                Section.table("results", Message.of("visit.inOneUnit", answer.results().size()), List.of(
                        Message.of("visit.field.parameter"), Message.of("visit.resultHead"), Message.of("visit.plusMinusHead")),
                        results(answer))));
    }

    private static List<Line> misfits(WaterReportAnswer answer) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < answer.impossible().size(); i++) {
            lines.add(Line.of("/impossible/" + i + "/message", answer.impossible().get(i).message()));
        }
        for (int i = 0; i < answer.contradictions().size(); i++) {
            lines.add(Line.of("/contradictions/" + i + "/message", answer.contradictions().get(i).message()));
        }
        for (int i = 0; i < answer.slips().size(); i++) {
            lines.add(new Line(Message.of("visit.slips"), "/slips/" + i + "/message", answer.slips().get(i).message()));
        }
        for (int i = 0; i < answer.notes().size(); i++) {
            ReportNoteAnswer note = answer.notes().get(i);
            lines.add(new Line(Message.of(note.about().get(0)), "/notes/" + i + "/message", note.message()));
        }
        return lines.isEmpty() ? List.of(Line.of(null, Message.of("visit.nothingMisfits"))) : lines;
    }

    private static List<Row> tests(WaterReportAnswer answer) {
        return IntStream.range(0, Math.min(SHOWN_TESTS, answer.nextTests().size())).mapToObj(i -> {
            NextTestAnswer test = answer.nextTests().get(i);
            long cases = Math.round(CASES * test.changesPercent().doubleValue() / PERCENT);
            return Row.of(Message.of(test.parameter()), SheetCell.inWords("/nextTests/" + i + "/changesPercent",
                    Message.of("visit.ofTwenty", cases), test.changesPercent()),
                    new SheetCell("/nextTests/" + i + "/sampling", test.sampling(), null));
        }).toList();
    }

    /** What does not keep to a limit, of a public authority or of resin. */
    private static List<Row> limits(WaterReportAnswer answer) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < answer.guidelines().size(); i++) {
            GuidelineAnswer line = answer.guidelines().get(i);
            if (!line.holds()) {
                String at = "/guidelines/" + i;
                boolean above = line.high() != null && line.value().compareTo(line.high()) > 0;
                rows.add(Row.of(Message.of(line.parameter()), cell(at + "/value", line.value(), line.unit()),
                        cell(at + (above ? "/high" : "/low"), above ? line.high() : line.low(), line.unit()),
                        new SheetCell(at + "/source", line.source(), null)));
            }
        }
        for (int i = 0; i < answer.resin().size(); i++) {
            ResinLimitAnswer line = answer.resin().get(i);
            if (!line.holds()) {
                String at = "/resin/" + i;
                rows.add(Row.of(Message.of(line.parameter()), cell(at + "/value", line.value(), line.unit()),
                        cell(at + "/high", line.high(), line.unit()), SheetCell.words(Message.of("visit.forResin"))));
            }
        }
        return rows;
    }

    private static List<Row> results(WaterReportAnswer answer) {
        return IntStream.range(0, answer.results().size()).mapToObj(i -> {
            ReportedValue result = answer.results().get(i);
            String at = "/results/" + i;
            boolean below = result.limit() != null && result.value().signum() == 0;
            return Row.of(Message.of(result.parameter()), below
                    ? SheetCell.inWords(at + "/limit", Message.of("visit.below", measure(result.limit(), result.unit())), result.limit())
                    : cell(at + "/value", result.value(), result.unit()), cell(at + "/uncertainty", result.uncertainty(), result.unit()));
        }).toList();
    }

    private static SheetCell cell(String at, BigDecimal value, ReportUnit unit) {
        return SheetCell.inWords(at, measure(value, unit), value);
    }

    private static Message measure(BigDecimal value, ReportUnit unit) {
        BigDecimal digits = Text.digits(value.doubleValue());
        return unit == ReportUnit.PH ? Message.of("pattern.value", digits) : Text.measure(digits, unit.symbol());
    }
}
