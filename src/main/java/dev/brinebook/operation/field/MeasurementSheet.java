// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.request.field.FieldMeasurementsRequest;
import dev.brinebook.sheet.RecordSheet;
import dev.brinebook.sheet.RecordSheet.Line;
import dev.brinebook.sheet.RecordSheet.Section;
import dev.brinebook.sheet.Row;
import dev.brinebook.sheet.SheetCell;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/** What was measured at a softener as a sheet to print. */
final class MeasurementSheet {

    private MeasurementSheet() {
    }

    /** The forms, by what answers a request. */
    static List<AnswerForm<FieldMeasurementsRequest>> forms(Function<FieldMeasurementsRequest, FieldMeasurementsAnswer> answer) {
        return RecordSheet.forms("apartment", request -> of(answer.apply(request)),
                request -> HomeCountry.units(request.units(), request.country()) == AnswerUnits.METRIC);
    }

    static RecordSheet of(FieldMeasurementsAnswer answer) {
        return RecordSheet.of(Message.of("visit.sheet.measurements"), answer.summary(), answer.modelVersion(), List.of(
                Section.list("cautions", Message.of("sheetWords.pleaseKnow"), lines("/cautions/", answer.cautions().size(),
                        i -> answer.cautions().get(i).message())),
                Section.list("findings", Message.of("visit.contradicts"), answer.findings().isEmpty()
                        ? List.of(Line.of(null, Message.of("visit.nothingContradicts")))
                        : lines("/findings/", answer.findings().size(), i -> answer.findings().get(i).message())),
                Section.list("next", Message.of("visit.measureNext"), lines("/nextMeasurements/", answer.nextMeasurements().size(),
                        i -> answer.nextMeasurements().get(i).message())),
                Section.table("quantities", Message.of("visit.quantities"), List.of(Message.of("visit.quantityHead"),
                        Message.of("visit.valueHead"), Message.of("visit.intervalHead")), new Quantities(answer).rows)));
    }

    private static List<Line> lines(String at, int count, Function<Integer, Message> text) {
        return IntStream.range(0, count).mapToObj(i -> Line.of(at + i + "/message", text.apply(i))).toList();
    }

    /** A row for each quantity that is known, in the order of the answer. */
    private static final class Quantities {

        private final List<Row> rows = new ArrayList<>();

        Quantities(FieldMeasurementsAnswer answer) {
            salt(answer.salt());
            resin(answer.resin());
            FieldFlows flows = answer.flows();
            add("/flows/drain", Message.of("visit.quantity.flows.drain"), flows.drain());
            add("/flows/refill", Message.of("visit.quantity.flows.refill"), flows.refill());
            add("/flows/brineDraw", Message.of("visit.quantity.flows.brineDraw"), flows.brineDraw());
            add("/flows/service", Message.of("visit.quantity.flows.service"), flows.service());
            add("/brine/degrees", Message.of("visit.quantity.brine.degrees"), answer.brine().degrees());
            bed(answer.bed());
        }

        private void salt(FieldSalt salt) {
            if (salt.combined() != null) {
                add("/salt/combined/mean", Message.of("visit.settles.salt"), salt.combined().mean());
            }
            add("/salt/byRefill", Message.of("visit.quantity.salt.byRefill"), salt.byRefill());
            add("/salt/byDraw", Message.of("visit.quantity.salt.byDraw"), salt.byDraw());
            add("/salt/byBooks", Message.of("visit.quantity.salt.byBooks"), salt.byBooks());
        }

        private void resin(FieldResin resin) {
            if (resin.combined() != null) {
                add("/resin/combined/mean", Message.of("visit.settles.resin"), resin.combined().mean());
            }
            add("/resin/byGeometry", Message.of("visit.quantity.resin.byGeometry"), resin.byGeometry());
            add("/resin/byNameplate", Message.of("visit.quantity.resin.byNameplate"), resin.byNameplate());
            add("/resin/byRun", Message.of("visit.quantity.resin.byRun"), resin.byRun());
            add("/resin/capacity", Message.of("visit.quantity.resin.capacity"), resin.capacity());
            add("/resin/capacityLeft", Message.of("visit.quantity.resin.capacityLeft"), resin.capacityLeft());
            add("/resin/freeboard", Message.of("visit.quantity.resin.freeboard"), resin.freeboard());
        }

        private void bed(FieldBed bed) {
            add("/bed/rawWater", Message.of("visit.quantity.bed.rawWater"), bed.rawWater());
            add("/bed/meterCounts", Message.of("visit.quantity.bed.meterCounts"), bed.meterCounts());
            add("/bed/lift", Message.of("visit.quantity.bed.lift"), bed.lift());
            add("/bed/pressureLoss", Message.of("visit.quantity.bed.pressureLoss"), bed.pressureLoss());
            add("/bed/cleanBedLoss", Message.of("visit.quantity.bed.cleanBedLoss"), bed.cleanBedLoss());
        }

        private void add(String at, Message label, MeasuredValue measured) {
            if (measured != null) {
                Message value = measured.unit().equals("degrees") ? Message.of("pattern.value", digits(measured.value()))
                        : Text.measure(digits(measured.value()), measured.unit());
                rows.add(Row.of(label, SheetCell.inWords(at + "/value", value, measured.value()),
                        new SheetCell(at + "/low " + at + "/high", Message.of("screen.between", digits(measured.low()),
                                digits(measured.high())), null)));
            }
        }

        private static BigDecimal digits(BigDecimal value) {
            return Text.digits(value.doubleValue());
        }
    }
}
