// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.cycle.CycleStepLine;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.sheet.Sentence;
import dev.brinebook.sheet.SheetCell;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Step;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A card for the hands at the controller: what to enter, and what to measure.
 *
 * @param say fixed words
 * @param head texts and dates of the job
 * @param description one sentence about the page
 * @param step what is done
 * @param resin the bed that is set
 * @param note that the softener does not fit, and what there is to say of settings that are not listed
 */
record InstallerCard(Map<String, SheetWords> say, SheetCase.Head head, Message description, Sentence step, SheetCell resin,
        List<CardSettings.Entry> settings, List<Message> note, List<Check> checks) {

    /** What a bucket and a watch measure a flow or a volume to, as a share. Source: our assumption. */
    private static final BigDecimal ASSUMED_READING = new BigDecimal("0.1");

    /**
     * Something to measure.
     *
     * @param should what the calculation expects
     * @param band from where to where it is right
     * @param assumed what it rests on that nobody measured, or null
     */
    record Check(SheetWords what, SheetCell should, Message band, Guess assumed) {
    }

    static InstallerCard of(SheetCase sheet) {
        CardSettings settings = CardSettings.of(sheet);
        return new InstallerCard(SheetWords.all(), sheet.head(), sheet.answer().verdict().sentence(), sheet.stepInWords(),
                resin(sheet), settings.rows(), note(sheet, settings),
                checks(sheet));
    }

    /** Of the softener that is there, or of the one that takes its place. */
    private static SheetCell resin(SheetCase sheet) {
        return sheet.replacesBed() ? SheetCell.words(sheet.cycle().orElseThrow().resin())
                : SheetCell.of("/fit/resinVolume", sheet.answer().fit().resinVolume());
    }

    private static List<Message> note(SheetCase sheet, CardSettings settings) {
        return Stream.concat(sheet.unfit().map(why -> Message.of("assess.softenerDoesFitHousehold")).stream(),
                ofSettings(sheet, settings).stream()).toList();
    }

    private static List<Message> ofSettings(SheetCase sheet, CardSettings settings) {
        return switch (sheet.stepNow()) {
            case TREAT_FIRST -> List.of(Message.of(SheetWords.TREAT_BEFORE_SETTING));
            case NONE_NEEDED -> List.of(sheet.answer().verdict().action());
            case REPLACE -> sheet.cycle().isPresent() ? List.of() : List.of(sheet.answer().verdict().action());
            case AS_FOUND, SET_RIGHT -> List.of(Message.of(settings.rows().isEmpty() ? SheetWords.NOTHING_TO_SET
                    : SheetWords.LEAVE_OTHERS));
            default -> List.of();
        };
    }

    private static List<Check> checks(SheetCase sheet) {
        List<Check> checks = new ArrayList<>();
        if (sheet.cycle().isEmpty() || sheet.step() == Step.NONE_NEEDED) {
            return checks;
        }
        SheetCycle cycle = sheet.cycle().get();
        FlowQuantity flow = cycle.table().backwash().flow();
        checks.add(new Check(SheetWords.DRAIN_FLOW, cycle.cell("/cycle/backwash/flow", flow), Text.roundedSpan(
                new FlowQuantity(low(flow.value()), flow.unit()), new FlowQuantity(high(flow.value()), flow.unit())),
                Guess.DRAIN_FLOW.in(sheet)));
        brine(cycle, sheet).ifPresent(checks::add);
        VolumeQuantity water = cycle.refill().water();
        checks.add(new Check(SheetWords.REFILL_WATER, cycle.cell("/refill/water", water), Text.roundedSpan(
                new VolumeQuantity(low(water.value()), water.unit()), new VolumeQuantity(high(water.value()), water.unit())),
                Guess.REFILL_FLOW.in(sheet)));
        checks.add(new Check(SheetWords.SOFT_HARDNESS, null, Message.of("installerCard.below", sheet.softBelow()), null));
        return checks;
    }

    /** The brine is drawn and rinsed out in its step; the usual range is the band. */
    private static Optional<Check> brine(SheetCycle cycle, SheetCase sheet) {
        List<CycleStepLine> steps = cycle.table().steps();
        return IntStream.range(0, steps.size()).filter(i -> steps.get(i).step() == CycleStep.Kind.BRINE_AND_SLOW_RINSE)
                .mapToObj(i -> new Check(SheetWords.BRINE_MINUTES, cycle.cell("/cycle/steps/" + i + "/wholeMinutes",
                        BigDecimal.valueOf(steps.get(i).wholeMinutes())), Message.of("text.to", steps.get(i).guideMinMinutes(),
                        steps.get(i).guideMaxMinutes()), Guess.BRINE_FLOW.in(sheet))).findFirst();
    }

    private static BigDecimal low(BigDecimal value) {
        return value.multiply(BigDecimal.ONE.subtract(ASSUMED_READING));
    }

    private static BigDecimal high(BigDecimal value) {
        return value.multiply(BigDecimal.ONE.add(ASSUMED_READING));
    }
}
