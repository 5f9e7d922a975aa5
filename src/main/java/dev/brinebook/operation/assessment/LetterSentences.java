// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.verdict.IncrementAnswer;
import dev.brinebook.answer.verdict.RungAnswer;
import dev.brinebook.api.OptionalResultAnswer;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.operation.assessment.LetterFigures.Gain;
import dev.brinebook.operation.assessment.SheetCase.Option;
import dev.brinebook.sheet.Sentence;
import dev.brinebook.sheet.SheetCell;
import dev.brinebook.softener.Fit;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Rung;
import dev.brinebook.verdict.Step;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What a letter says to the customer, in plain sentences. */
final class LetterSentences {

    private static final String HORIZON = "/retrofit/horizonYears";
    private static final int CASES = 20;
    private static final int MOST_CHANGES = 3;
    /** What a larger bed in such a tank would not cure. */
    private static final Set<Fit.Shortcoming> OF_TANK = EnumSet.of(Fit.Shortcoming.BED_TOO_SHALLOW, Fit.Shortcoming.NO_ROOM_FOR_BACKWASH,
            Fit.Shortcoming.LEAKS_ABOVE_END_POINT);

    private final SheetCase sheet;
    private final LetterFigures figures;

    LetterSentences(LetterFigures figures) {
        this.sheet = figures.sheet();
        this.figures = figures;
    }

    List<Sentence> found() {
        List<Sentence> sentences = new ArrayList<>();
        SheetCell tested = sheet.tested();
        sentences.add(Sentence.of(Message.of("customerLetter.waterHasHardness", tested.value()), tested));
        if (sheet.step() == Step.TREAT_FIRST) {
            sentences.add(Sentence.of(Message.of("customerLetter.softenerAloneDoesNot")));
        }
        figures.now().ifPresent(now -> sentences.add(LetterFigures.hasHardDays(now)
                ? Sentence.of(Message.of("customerLetter.softenerUsesBagsHard", figures.wholeBags(now), LetterFigures.wholeDays(now)),
                        figures.bags(now), figures.hardDays(now))
                : Sentence.of(Message.of("customerLetter.softenerUsesBags", figures.wholeBags(now)), figures.bags(now))));
        unfit().ifPresent(sentences::add);
        return sentences;
    }

    /** That the softener does not fit, without the words of the trade. */
    private Optional<Sentence> unfit() {
        boolean tank = sheet.answer().fit().shortcomings().stream().allMatch(OF_TANK::contains);
        return sheet.doesNotFit().map(why -> Sentence.of(Message.of("customerLetter.softenerDoesNotFit", tank ? "tank" : "small")));
    }

    List<Sentence> suggested() {
        List<Sentence> sentences = new ArrayList<>();
        sentences.add(Sentence.of(action()));
        if (sheet.step() == Step.TREAT_FIRST) {
            sentences.add(new Sentence("/verdict/sentence", sheet.answer().verdict().sentence()));
        }
        figures.advised().ifPresent(option -> {
            sentences.addAll(option.step() == Step.SET_RIGHT ? corrected()
                    : Stream.concat(Stream.of(price(option)), figures.gain().stream().flatMap(gain -> gains(gain).stream())).toList());
            hardDays(option).ifPresent(sentences::add);
        });
        return sentences;
    }

    private Message action() {
        Step step = sheet.step();
        if (step == Step.REPLACE && !served()) {
            return Message.of("customerLetter.noUsualSize");
        }
        return switch (step) {
            case NONE_NEEDED -> Message.of("customerLetter.youDoNotNeed");
            case TREAT_FIRST -> Message.of("customerLetter.haveWaterTreated");
            case AS_FOUND -> Message.of("customerLetter.changeNothing");
            case SET_RIGHT -> Message.of("customerLetter.haveSettingsCorrected");
            case CONVERT -> Message.of("customerLetter.haveControllerFitted");
            case REPLACE -> replaced();
            case IMPROVE -> Message.of("customerLetter.haveSoftenerImproved", WireNames.of(sheet.answer().verdict().improvement()));
        };
    }

    private boolean served() {
        return sheet.answer().verdict().ladder().stream().filter(rung -> rung.step() == sheet.step()).allMatch(RungAnswer::serves);
    }

    private Message replaced() {
        String goods = sheet.answer().verdict().goods();
        return goods == null ? Message.of("customerLetter.haveSoftenerReplaced")
                : Message.of("customerLetter.haveSoftenerReplacedBy", Message.named(goods));
    }

    private Sentence price(Option option) {
        Money price = option.rung().firstCost();
        if (price == null) {
            return Sentence.of(Message.of("customerLetter.askForPrice"));
        }
        SheetCell cell = sheet.money(option.at("firstCost"), price);
        return option.rung().firstCostLacks() == null ? Sentence.of(Message.of("customerLetter.itCosts", cell.value()), cell)
                : Sentence.of(Message.sentences(Message.of("customerLetter.itCosts", cell.value()),
                        Message.of("customerLetter.moreWorkIsNeeded")), cell);
    }

    /** Nothing is bought; what it then costs a year may still be more. */
    private List<Sentence> corrected() {
        return figures.gain().filter(gain -> sign(gain) < 0).map(gain -> {
            SheetCell cell = size(gain);
            return List.of(Sentence.of(Message.of("customerLetter.nothingToBuy", cell.value()), cell));
        }).orElseGet(() -> Stream.concat(Stream.of(Sentence.of(Message.of("customerLetter.thisIsFree"))),
                figures.gain().stream().flatMap(gain -> gains(gain).stream())).toList());
    }

    private static int sign(Gain gain) {
        return SheetCase.rounded(gain.increment().savedPerYear().value()).signum();
    }

    /** What a year costs less or more, without a sign. */
    private SheetCell size(Gain gain) {
        Money saved = gain.increment().savedPerYear();
        return sheet.money(gain.at("savedPerYear"), new Money(saved.value().abs(), saved.unit()));
    }

    private List<Sentence> gains(Gain gain) {
        List<Sentence> sentences = new ArrayList<>();
        String over = WireNames.of(gain.increment().over());
        int sign = sign(gain);
        SheetCell cell = size(gain);
        sentences.add(sign == 0 ? Sentence.of(Message.of("customerLetter.costsStay"))
                : Sentence.of(sign > 0 ? Message.of("customerLetter.youSave", cell.value(), over)
                        : Message.of("customerLetter.costsMore", cell.value(), over), cell));
        if (priced(gain)) {
            payback(gain).ifPresent(sentences::add);
        }
        figures.interim().ifPresent(interim -> sentences.addAll(untilThen(gain, interim)));
        return sentences;
    }

    /** The price up to which it pays, and what to do until it is bought. */
    private List<Sentence> untilThen(Gain gain, Option interim) {
        SheetCell limit = sheet.money(gain.at("worthUpTo"), gain.increment().worthUpTo());
        SheetCell more = size(new Gain(interim, "overAsFound", interim.rung().overAsFound()));
        return List.of(Sentence.of(Message.of("customerLetter.paysBelow", limit.value()), limit),
                Sentence.of(Message.of("customerLetter.untilThen", more.value()), more));
    }

    private static boolean priced(Gain gain) {
        Money price = gain.option().rung().firstCost();
        return price != null && price.value().signum() > 0;
    }

    private Optional<Sentence> payback(Gain gain) {
        IncrementAnswer increment = gain.increment();
        OptionalResultAnswer years = increment.simplePaybackYears();
        boolean pays = increment.netPresentValue() != null && increment.netPresentValue().value().signum() > 0;
        if (!pays) {
            return Optional.of(Sentence.of(Message.of("customerLetter.doesNotPay")));
        }
        if (years == null || years.value() == null) {
            return Optional.empty();
        }
        SheetCell cell = SheetCell.of(gain.at("simplePaybackYears/value"), years.value());
        return Optional.of(Sentence.of(Message.of("customerLetter.itPaysBack", Text.years(years.value().doubleValue())), cell));
    }

    /** Days of hard water, where the change makes them more or fewer by a day at least. */
    private Optional<Sentence> hardDays(Option option) {
        return figures.now().filter(now -> now.rung().hardDays().subtract(option.rung().hardDays()).abs().compareTo(BigDecimal.ONE) >= 0)
                .map(now -> Sentence.of(Message.of("customerLetter.hardDaysInstead", LetterFigures.wholeDays(option),
                        LetterFigures.wholeDays(now)), figures.hardDays(option), figures.hardDays(now)));
    }

    /** The range, and what would make the advice another. */
    List<Sentence> changes() {
        List<Sentence> sentences = new ArrayList<>();
        figures.gain().filter(LetterSentences::priced).ifPresent(gain -> {
            likely(gain).ifPresent(sentences::add);
            limit(gain).ifPresent(sentences::add);
        });
        next().ifPresent(sentences::add);
        if (sheet.answer().readings() != null && sheet.step() != Step.NONE_NEEDED) {
            sentences.add(Sentence.of(Message.of("customerLetter.readMeter")));
        }
        return sentences.stream().limit(MOST_CHANGES).toList();
    }

    private Optional<Sentence> likely(Gain gain) {
        BigDecimal percent = gain.increment().paysPercent();
        if (percent == null) {
            return Optional.empty();
        }
        BigDecimal of20 = percent.multiply(BigDecimal.valueOf(CASES)).movePointLeft(2).setScale(0, RoundingMode.HALF_UP);
        BigDecimal years = sheet.resolved(HORIZON).orElseThrow().value();
        return Optional.of(Sentence.of(Message.of("customerLetter.inHomesLikeYours", of20, CASES, years),
                SheetCell.of(gain.at("paysPercent"), percent)));
    }

    private Optional<Sentence> limit(Gain gain) {
        Money limit = gain.increment().worthUpTo();
        boolean pays = gain.increment().netPresentValue() != null && gain.increment().netPresentValue().value().signum() > 0;
        SheetCell cell = sheet.money(gain.at("worthUpTo"), limit);
        return pays ? Optional.of(Sentence.of(Message.of("customerLetter.stopsPaying", cell.value()), cell)) : Optional.empty();
    }

    /** The price at which the next larger change would pay, if it is worth naming. */
    private Optional<Sentence> next() {
        Optional<Step> worth = sheet.assessment().ladder().worthAPrice().map(Rung::step);
        return figures.next().filter(option -> option.step() != Step.SET_RIGHT && worth.filter(step -> step == option.step()).isPresent())
                .map(option -> {
                    SheetCell cell = sheet.money(option.at("overBelow/worthUpTo"), option.rung().overBelow().worthUpTo());
                    return Sentence.of(Message.of("customerLetter.nextPays", StepWord.of(option.rung()).code(), cell.value()), cell);
                });
    }

    /** What goes on if nothing is changed. */
    List<Sentence> otherwise() {
        Step step = sheet.step();
        if (step == Step.TREAT_FIRST) {
            return List.of(Sentence.of(Message.of("customerLetter.waterStaysAs")));
        }
        return figures.now().filter(now -> step != Step.AS_FOUND).map(now -> List.of(LetterFigures.hasHardDays(now)
                ? Sentence.of(Message.of("customerLetter.goesOnHard", figures.cost(now).value(), LetterFigures.wholeDays(now)),
                        figures.cost(now), figures.hardDays(now))
                : Sentence.of(Message.of("customerLetter.goesOn", figures.cost(now).value()), figures.cost(now)))).orElse(List.of());
    }
}
