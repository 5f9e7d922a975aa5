// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.verdict.RungAnswer;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.resin.CyclicColumn;
import dev.brinebook.sheet.Sentence;
import dev.brinebook.sheet.SheetCell;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Improvement;
import dev.brinebook.verdict.Step;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What every sheet is made of.
 *
 * @param request the request, without violations
 * @param answer its answer
 * @param assessment what it was calculated from
 * @param units the units of the answer
 * @param language the language of the sheet, which writes money in its own way
 * @param modelVersion the version of the formulas and data
 */
record SheetCase(AssessmentRequest request, AssessmentAnswer answer, Assessment assessment, AnswerUnits units, Language language,
        String modelVersion) {

    /** Head and foot of every sheet: texts and dates as given, null for a blank. */
    record Head(String name, String address, Message testedOn, Message seenOn, String writtenBy, String phone, String modelVersion) {
    }

    /** An option of the verdict that has figures, at its place in the ladder. */
    record Option(int place, RungAnswer rung) {

        Step step() {
            return rung.step();
        }

        String at(String property) {
            return "/verdict/ladder/" + place + "/" + property;
        }
    }

    Head head() {
        JobRequest job = request.job() == null ? JobRequest.NONE : request.job();
        return new Head(job.name(), job.address(), date(job.testedOn()), date(job.seenOn()), job.writtenBy(), job.phone(),
                modelVersion);
    }

    private static Message date(LocalDate day) {
        return day == null ? null : Message.of("pattern.value", day);
    }

    Step step() {
        return answer.verdict().step();
    }

    /** The step in its name; the sentence where its words are what there is to do. */
    Sentence stepInWords() {
        List<RungAnswer> ladder = answer.verdict().ladder();
        return IntStream.range(0, ladder.size()).filter(i -> ladder.get(i).step() == step() && step() != Step.TREAT_FIRST)
                .mapToObj(i -> new Sentence("/verdict/ladder/" + i + "/name", ladder.get(i).name())).findFirst()
                .orElseGet(() -> new Sentence("/verdict/sentence", answer.verdict().sentence()));
    }

    /** Whether the present control stays: as it is, or a clock whose settings are corrected. */
    boolean keepsControl() {
        return stepNow() == Step.AS_FOUND || stepNow() == Step.SET_RIGHT && answer.retrofit() != null;
    }

    /** The step whose settings are entered now: until something without a price is bought, that of the free settings below it. */
    Step stepNow() {
        return LetterFigures.of(this).interim().map(Option::step).orElse(step());
    }

    /** The regeneration that runs once the verdict is followed; absent where none does. */
    Optional<SheetCycle> cycle() {
        return SheetCycle.of(assessment, answer, stepNow(), keepsControl(), units);
    }

    /** Whether another bed takes the place of the one that is there. */
    boolean replacesBed() {
        return cycle().isPresent() && stepNow() == step()
                && (step() == Step.REPLACE || answer.verdict().improvement() == Improvement.LARGER_BED);
    }

    /** That the softener to work on does not fit, and why; empty where another one takes its place. */
    Optional<Message> unfit() {
        return replacesBed() ? Optional.empty() : doesNotFit();
    }

    /** That the softener does not fit, and why; empty where it does, and where no softener is the question. */
    Optional<Message> doesNotFit() {
        return answer.fit().fits() || step().compareTo(Step.AS_FOUND) < 0 ? Optional.empty() : Optional.of(Message.sentences(
                Stream.concat(Stream.of(Message.of("assess.softenerDoesFitHousehold")), answer.fit().reasons().stream()).toList()));
    }

    /** Options with figures, from the smallest to the largest change; none while the water must be treated first. */
    List<Option> options() {
        if (answer.year() == null) {
            return List.of();
        }
        List<RungAnswer> rungs = answer.verdict().ladder();
        return IntStream.range(0, rungs.size()).filter(i -> rungs.get(i).settings() != null).mapToObj(i -> new Option(i, rungs.get(i)))
                .toList();
    }

    Optional<Option> option(Step step) {
        return options().stream().filter(option -> option.step() == step).findFirst();
    }

    /** What an input came to, with its origin, if the calculation used it. */
    Optional<Resolved> resolved(String pointer) {
        return answer.assumptions().stream().filter(one -> pointer.equals(one.pointer())).findFirst();
    }

    /** Whether an input was used that nobody gave. */
    boolean guessed(String pointer) {
        return resolved(pointer).map(one -> one.origin() != Resolved.Origin.CALLER).orElse(false);
    }

    /** The tested hardness, in the unit of the test. */
    SheetCell tested() {
        HardnessQuantity given = request.water().hardness();
        HardnessQuantity answered = answer.hardness().tested();
        return given == null || given.unit() == answered.unit()
                ? SheetCell.inWords("/hardness/tested", Text.rounded(answered), answered.value())
                : SheetCell.words(Text.rounded(given));
    }

    /** The hardness below which the water is soft: the end point given, or the usual one in the unit of the test. */
    Message softBelow() {
        HardnessQuantity asked = request.preferences() == null ? null : request.preferences().endPoint();
        if (asked != null) {
            return Text.exact(asked);
        }
        HardnessQuantity given = request.water().hardness();
        HardnessUnit unit = given == null ? answer.hardness().tested().unit() : given.unit();
        return Text.rounded(new HardnessQuantity(Rounding.answer(unit.fromBase(CyclicColumn.DEFAULT_END_POINT_MG_PER_L)), unit));
    }

    /** Whether nobody said how much salt a regeneration takes. */
    boolean guessedSalt() {
        return request.softener().saltPerRegeneration() == null && guessed("/softener/saltDose");
    }

    /** Money as a customer reads it: rounded, with the sign of the currency where the language puts it. */
    SheetCell money(String at, Money money) {
        return SheetCell.inWords(at, money(money), money.value());
    }

    Message money(Money money) {
        Currency currency = money.currency();
        String sign = currency.getSymbol(Locale.forLanguageTag(language.tag()));
        return Message.of("customerLetter.money", rounded(money.value()), sign,
                Character.isLetter(sign.codePointBefore(sign.length())) ? "word" : "sign");
    }

    /** Whole below 100, above it in steps of 5. */
    static BigDecimal rounded(BigDecimal amount) {
        BigDecimal step = BigDecimal.valueOf(amount.abs().doubleValue() < 100 ? 1 : 5);
        return amount.divide(step, 0, RoundingMode.HALF_UP).multiply(step);
    }
}
