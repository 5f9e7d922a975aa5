// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.cycle.CycleStepLine;
import dev.brinebook.answer.softener.ControllerSetting;
import dev.brinebook.answer.softener.ReadinessCheck;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Text;
import dev.brinebook.assessment.CommissioningStep;
import dev.brinebook.operation.assessment.SheetCase.Option;
import dev.brinebook.sheet.Row;
import dev.brinebook.sheet.Sentence;
import dev.brinebook.sheet.SheetCell;
import dev.brinebook.softener.Readiness;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Step;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A list to tick off: before buying, on the day, and after it.
 *
 * @param say fixed words
 * @param head texts and dates of the job
 * @param description one sentence about the page
 * @param unfit that the softener does not fit, and why; empty where it does
 * @param fitted whether something is fitted, for which the list of steps is
 */
record SiteChecklist(Map<String, SheetWords> say, SheetCase.Head head, Message description, Sentence verdict,
        List<Message> unfit, boolean fitted,
        List<Before> buying, List<Row> steps, List<Message> day, List<Sentence> firstDay, List<Sentence> firstWeek,
        List<Sentence> firstMonth, List<SheetWords> readings, List<Reason> reasons, List<Group> cautions) {

    /** A condition, and what to do if it is known not to be met. */
    record Before(Message wanted, boolean met, List<Message> whenNotMet) {
    }

    /** A reason by the code on the card. */
    record Reason(String code, Message text) {
    }

    /** The cautions of a group. */
    record Group(CautionGroup name, List<Message> cautions) {
    }

    static SiteChecklist of(SheetCase sheet) {
        boolean fitted = sheet.step().compareTo(Step.CONVERT) >= 0 && sheet.cycle().isPresent();
        boolean works = sheet.step().compareTo(Step.AS_FOUND) >= 0 && sheet.cycle().isPresent();
        List<Message> reasons = CardSettings.of(sheet).reasons();
        return new SiteChecklist(SheetWords.all(), sheet.head(), sheet.answer().verdict().sentence(), sheet.stepInWords(),
                sheet.unfit().stream().toList(), fitted,
                fitted ? sheet.answer().readiness().stream().map(SiteChecklist::before).toList() : List.of(),
                works ? steps(sheet) : List.of(), fitted ? day(sheet) : List.of(),
                works ? List.of(Sentence.of(Message.of(SheetWords.FIRST_DAY_SOFT)), Sentence.of(Message.of(SheetWords.FIRST_DAY_LEAKS)))
                        : List.of(),
                works ? firstWeek(sheet) : List.of(), works ? firstMonth(sheet) : List.of(),
                List.of(SheetWords.RAW_HARDNESS, SheetWords.RAW_IRON, SheetWords.SOFT_HARDNESS, SheetWords.METER, SheetWords.PRESSURE,
                        SheetWords.DRAIN_FLOW, SheetWords.REFILL_TIME),
                IntStream.range(0, reasons.size()).mapToObj(i -> new Reason("R" + (i + 1), reasons.get(i))).toList(), cautions(sheet));
    }

    private static Before before(ReadinessCheck check) {
        return new Before(check.wanted(), check.state() == Readiness.State.MET,
                check.state() == Readiness.State.NOT_MET ? List.of(check.whenNotMet()) : List.of());
    }

    /** What is limited there in the unit of the answer is limited here in that of the test. */
    private static List<Message> day(SheetCase sheet) {
        List<Message> day = new ArrayList<>(sheet.answer().commissioning());
        day.set(CommissioningStep.TEST_SOFTENED_WATER.ordinal(), Message.of("siteChecklist.testSoftenedWater", sheet.softBelow()));
        return day;
    }

    private static List<Row> steps(SheetCase sheet) {
        SheetCycle cycle = sheet.cycle().orElseThrow();
        List<CycleStepLine> steps = cycle.table().steps();
        return IntStream.range(0, steps.size()).mapToObj(i -> {
            CycleStepLine step = steps.get(i);
            String at = "/cycle/steps/" + i;
            return Row.of(Message.of(ControllerSetting.of(step.step())), step.tenthMinutes() == null
                    ? cycle.cell(at + "/wholeMinutes", BigDecimal.valueOf(step.wholeMinutes()))
                    : cycle.cell("/settings/refillMinutes", cycle.refillMinutes()),
                    cycle.cell(at + "/flow", step.flow()), cycle.cell(at + "/waterTaken", step.waterTaken()),
                    cycle.cell(at + "/waterToDrain", step.waterToDrain()));
        }).toList();
    }

    private static List<Sentence> firstWeek(SheetCase sheet) {
        List<Sentence> sentences = new ArrayList<>();
        works(sheet).filter(option -> option.rung().regenerations().signum() > 0).ifPresent(option -> {
            BigDecimal perYear = option.rung().regenerations();
            sentences.add(Sentence.of(Message.of("siteChecklist.regenerationsPerYear", Text.days(365 / perYear.doubleValue())),
                    SheetCell.of(option.at("regenerations"), perYear)));
        });
        sentences.add(Sentence.of(Message.of(SheetWords.FIRST_WEEK_SALT)));
        return sentences;
    }

    private static List<Sentence> firstMonth(SheetCase sheet) {
        List<Sentence> sentences = new ArrayList<>();
        works(sheet).ifPresent(option -> {
            SheetCell salt = SheetCell.of(option.at("salt"), option.rung().salt());
            sentences.add(Sentence.of(Message.of("siteChecklist.saltPerYear", Text.rounded(option.rung().salt())), salt));
        });
        sentences.add(Sentence.of(Message.of(SheetWords.FIRST_MONTH_METER)));
        return sentences;
    }

    /** The option that is there once the verdict is followed. */
    private static Optional<Option> works(SheetCase sheet) {
        return sheet.option(sheet.step());
    }

    /** Each caution once, by its group. */
    private static List<Group> cautions(SheetCase sheet) {
        return Arrays.stream(CautionGroup.values()).map(group -> new Group(group, sheet.answer().cautions().stream()
                .filter(caution -> CautionGroup.of(caution) == group).map(CautionAnswer::message).toList()))
                .filter(group -> !group.cautions().isEmpty()).toList();
    }
}
