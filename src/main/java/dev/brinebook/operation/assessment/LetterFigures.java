// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.verdict.IncrementAnswer;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.operation.assessment.SheetCase.Option;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.sheet.Bar;
import dev.brinebook.sheet.Row;
import dev.brinebook.sheet.Sentence;
import dev.brinebook.sheet.SheetCell;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Rung;
import dev.brinebook.verdict.Step;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Numbers of a letter: the softener now, the option advised, and the next one up.
 *
 * @param sheet the case
 * @param now the softener now; absent where the water must be treated first
 * @param advised the option of the verdict; absent where it is the softener now, or has no figures
 * @param next the next larger change, absent where there is none
 */
record LetterFigures(SheetCase sheet, Optional<Option> now, Optional<Option> advised, Optional<Option> next) {

    /** Fewer hard days are none in a usual year. */
    private static final BigDecimal HALF_DAY = new BigDecimal("0.5");

    static LetterFigures of(SheetCase sheet) {
        Step verdict = sheet.step();
        Optional<Option> now = sheet.option(Step.AS_FOUND);
        Optional<Option> advised = verdict == Step.AS_FOUND ? Optional.empty() : sheet.option(verdict);
        Step reached = advised.map(Option::step).orElse(Step.AS_FOUND);
        Optional<Option> next = verdict == Step.NONE_NEEDED || verdict == Step.TREAT_FIRST ? Optional.empty()
                : sheet.options().stream().filter(option -> option.step().compareTo(reached) > 0).findFirst();
        return new LetterFigures(sheet, now, advised, next);
    }

    /** The options side by side, with that which the saving is over. */
    List<Option> columns() {
        return Stream.of(now, gain().flatMap(gain -> sheet.option(gain.increment().over())), advised, next).flatMap(Optional::stream)
                .distinct().toList();
    }

    List<Message> heads() {
        return columns().stream().map(option -> Message.of(StepWord.of(option.rung()))).toList();
    }

    List<Row> rows() {
        if (now.isEmpty()) {
            return List.of();
        }
        return List.of(row(SheetWords.HARD_DAYS, this::hardDays), new Row(Message.of("customerLetter.bagsOf", Text.rounded(bag())),
                        columns().stream().map(this::bags).toList()),
                row(SheetWords.WATER_USED, LetterFigures::water),
                row(SheetWords.COST, this::cost));
    }

    private Row row(SheetWords label, Function<Option, SheetCell> cell) {
        return new Row(Message.of(label), columns().stream().map(cell).toList());
    }

    /** Whole days. */
    SheetCell hardDays(Option option) {
        BigDecimal days = option.rung().hardDays();
        return SheetCell.inWords(option.at("hardDays"), Message.of("pattern.value", Text.whole(days.doubleValue())), days);
    }

    static BigDecimal wholeDays(Option option) {
        return Text.whole(option.rung().hardDays().doubleValue());
    }

    /** Whether there is a day of hard water to speak of. */
    static boolean hasHardDays(Option option) {
        return option.rung().hardDays().compareTo(HALF_DAY) >= 0;
    }

    /** Whole bags, rounded up. */
    SheetCell bags(Option option) {
        return SheetCell.inWords(option.at("salt"), Message.of("pattern.value", wholeBags(option)), option.rung().salt().value());
    }

    BigDecimal wholeBags(Option option) {
        return option.rung().salt().value().divide(bag().value(), 0, RoundingMode.CEILING);
    }

    private MassQuantity bag() {
        return sheet.answer().year().saltAsFound().bag();
    }

    /** As on a bill: in cubic metres where the answer has litres. */
    private static SheetCell water(Option option) {
        VolumeQuantity water = option.rung().water();
        VolumeQuantity billed = water.unit() == VolumeUnit.LITRE ? new VolumeQuantity(Rounding.answer(
                VolumeUnit.CUBIC_METRE.fromBase(water.inBase())), VolumeUnit.CUBIC_METRE) : water;
        return SheetCell.inWords(option.at("water"), Text.rounded(billed), water.value());
    }

    SheetCell cost(Option option) {
        return sheet.money(option.at("costPerYear"), option.rung().costPerYear());
    }

    /** The saving that the verdict states: over the settings until then, else what {@link Rung#counted} is over. */
    Optional<Gain> gain() {
        return advised.map(option -> {
            Rung rung = sheet.assessment().ladder().rung(option.step());
            return interim().isPresent() || rung.counted().equals(rung.overBelow())
                    ? new Gain(option, "overBelow", option.rung().overBelow())
                    : new Gain(option, "overAsFound", option.rung().overAsFound());
        }).filter(gain -> gain.increment() != null);
    }

    /** The free settings to use until the step advised, whose price is not known, is bought. */
    Optional<Option> interim() {
        return sheet.assessment().ladder().interim().flatMap(rung -> sheet.option(rung.step()));
    }

    /** The benefit of an option over another. */
    record Gain(Option option, String over, IncrementAnswer increment) {

        String at(String property) {
            return option.at(over + "/" + property);
        }
    }

    /** What each step costs a year; none where nothing costs anything. */
    List<Bar> chart() {
        double largest = sheet.options().stream().mapToDouble(LetterFigures::costPerYear).max().orElse(0);
        if (largest <= 0 || sheet.options().size() < 2 || sheet.step() == Step.NONE_NEEDED) {
            return List.of();
        }
        return sheet.options().stream().map(option -> Bar.of(Message.of(StepWord.of(option.rung())), cost(option),
                costPerYear(option), largest)).toList();
    }

    /** The finding of the chart. */
    Sentence chartTitle() {
        SheetCell before = cost(now.orElseThrow());
        return advised.map(option -> Sentence.of(Message.of("customerLetter.chartFrom", before.value(), cost(option).value()), before,
                cost(option))).orElseGet(() -> Sentence.of(Message.of("customerLetter.chartNow", before.value()), before));
    }

    private static double costPerYear(Option option) {
        return option.rung().costPerYear().value().doubleValue();
    }
}
