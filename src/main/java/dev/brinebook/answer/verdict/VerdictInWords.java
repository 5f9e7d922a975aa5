// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.verdict;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.payback.AgainstBaseline;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.Question;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.text.Joint;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Improvement;
import dev.brinebook.verdict.Increment;
import dev.brinebook.verdict.Ladder;
import dev.brinebook.verdict.Rung;
import dev.brinebook.verdict.Step;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A verdict as a practitioner would say it to a customer. Source of what not softening leaves: [SWET-2011]. */
final class VerdictInWords {

    /** Up to here water is moderately hard, mg/L as CaCO3. Source: [USGS-HARDNESS]. */
    private static final double MODERATE_MG_PER_L = 120;

    private final Ladder ladder;
    private final DesignConditions duty;
    private final RunningCost cost;
    private final Currency currency;
    private final AnswerUnits units;
    private final Explanation explanation;

    VerdictInWords(Ladder ladder, DesignConditions duty, RunningCost cost, Currency currency, Explanation explanation) {
        this.ladder = ladder;
        this.cost = cost;
        this.duty = duty;
        this.currency = currency;
        this.explanation = explanation;
        this.units = AnswerUnits.of(explanation);
    }

    private Rung taken() {
        return ladder.rung(ladder.verdict().step());
    }

    private Improvement improvement() {
        return ladder.rung(Step.IMPROVE).what().improvement().orElseThrow();
    }

    Message sentence() {
        if (ladder.interim().isPresent()) {
            return tooSmall(ladder.interim().get());
        }
        return switch (ladder.verdict().step()) {
            case NONE_NEEDED -> soft();
            case TREAT_FIRST -> Message.of("verdict.treatWaterBeforeSoftening", Message.joined(Joint.AND,
                    ladder.treatments().stream().map(units::saying).toList()));
            case AS_FOUND -> Message.of("verdict.changeNothingNoChange");
            case SET_RIGHT -> corrected();
            case CONVERT -> withLacks(larger(Message.of("verdict.noSettingClockKeeps")));
            case IMPROVE -> withLacks(larger(Message.of("verdict.noSettingSoftenerKeeps")));
            case REPLACE -> withLacks(replaced());
        };
    }

    /** Too small: what to buy, up to which price, and what correct settings cost until then. */
    private Message tooSmall(Rung interim) {
        Increment over = taken().overBelow().orElseThrow();
        Rung asFound = ladder.rung(Step.AS_FOUND);
        double now = asFound.option().orElseThrow().year().hardDays();
        double then = interim.option().orElseThrow().year().hardDays();
        Message more = whole(-interim.overAsFound().orElseThrow().savedPerYear());
        return Message.sentences(ladder.verdict().step() == Step.CONVERT ? Message.of("verdict.clockRegeneratesTooOften")
                        : Message.of("verdict.softenerTooSmall"), change(),
                Message.of("verdict.askForPrice", whole(over.worthUpTo())),
                differ(then, now) ? Message.of("verdict.untilThenCorrect", more, days(then), days(now))
                        : Message.of("verdict.untilThenCorrectAsOften", more));
    }

    private Message withLacks(Message sentence) {
        return Message.sentences(Stream.concat(Stream.of(sentence), lacks().stream()).toList());
    }

    private Message soft() {
        Message hardness = Text.rounded(HardnessQuantity.forReader(duty.hardness().hardnessMgPerL(), explanation));
        return ladder.rung(Step.NONE_NEEDED).overAsFound().map(over -> Message.of("verdict.waterSoftSoftenerChanges", hardness,
                whole(over.savedPerYear()))).orElseGet(() -> Message.of("verdict.waterSoftSoftenerWould", hardness));
    }

    /** The settings, and the effect of the next step where they cost more than it would. */
    private Message corrected() {
        Rung right = taken();
        Optional<Rung> cheaper = ladder.worthAPrice().filter(rung -> rung.option().orElseThrow().outlay().isEmpty());
        double more = right.option().orElseThrow().costPerYear()
                - ladder.rung(Step.AS_FOUND).option().orElseThrow().costPerYear();
        return more > 0 && cheaper.isPresent() ? Message.sentences(List.of(settings(),
                pays(cheaper.get().step(), cheaper.get().overBelow().orElseThrow()))) : settings();
    }

    private Message settings() {
        Rung.Option right = taken().option().orElseThrow();
        Rung asFound = ladder.rung(Step.AS_FOUND);
        if (asFound.serves()) {
            return Message.of("verdict.correctSettingsFreeSave", whole(taken().overAsFound().orElseThrow().savedPerYear()));
        }
        double more = right.costPerYear() - asFound.option().orElseThrow().costPerYear();
        double now = asFound.option().orElseThrow().year().hardDays();
        double then = right.year().hardDays();
        Message why = now <= duty.standard().hardDaysPerYear() ? Message.of("verdict.correctSettingsNowHard")
                : !differ(then, now) ? Message.of("verdict.correctSettingsLessOften")
                : Message.of("verdict.correctSettingsSoHard", days(then), days(now));
        return Message.sentences(why, Math.abs(more) < 1 ? Message.of("verdict.costsNothing") : costs(more));
    }

    /** The change without its saving. */
    private Message change() {
        return switch (changeCode()) {
            case "convert" -> Message.of("verdict.convertMeteredController");
            case "secondTank" -> Message.of("verdict.addSecondTank");
            case "largerBed" -> Message.of("verdict.fitLargerResinTank");
            case "counterCurrent" -> Message.of("verdict.useCounterCurrentRegeneration");
            default -> taken().what().goods().isPresent() ? Message.of("verdict.replaceSoftener", goods())
                    : Message.of("verdict.replaceSoftenerLarger", resin(taken()));
        };
    }

    private String changeCode() {
        return switch (ladder.verdict().step()) {
            case CONVERT -> "convert";
            case IMPROVE -> WireNames.of(improvement());
            default -> "replace";
        };
    }

    private Message goods() {
        return taken().what().goods().map(Message::named).orElse(Message.verbatim(""));
    }

    private Message larger(Message need) {
        Rung.Option option = taken().option().orElseThrow();
        Rung asFound = ladder.rung(Step.AS_FOUND);
        Rung.Option found = asFound.option().orElseThrow();
        double then = option.year().hardDays();
        double now = found.year().hardDays();
        Message days = differ(then, now) ? Message.of("verdict.hardWaterGetsThrough", days(then), days(now))
                : Message.of("verdict.hardWaterAsOften");
        if (taken().overBelow().filter(over -> ladder.rung(over.over()).serves()).isEmpty()) {
            return Message.sentences(change(), need, days, costs(option.costPerYear() - found.costPerYear()));
        }
        Increment over = taken().counted().orElseThrow();
        if (over.savedPerYear() <= 0) {
            return Message.sentences(change(), days, costs(-over.savedPerYear()));
        }
        List<Message> sentences = new ArrayList<>(List.of(saves(over)));
        if (over.worth().isPresent() && !over.pays()) {
            sentences.add(Message.of("verdict.changeDoesPayItself"));
        }
        if (!asFound.serves()) {
            sentences.add(days);
        }
        return Message.sentences(sentences);
    }

    /** The change with its saving, the step compared with, and its payback if any. */
    private Message saves(Increment over) {
        Message saved = whole(over.savedPerYear());
        String comparedWith = WireNames.of(over.over());
        return over.worth().map(AgainstBaseline::simplePaybackYears).filter(years -> years.exists())
                .map(years -> Message.of("verdict.convertMeteredControllerSaveYear", changeCode(), saved, goods(), comparedWith,
                        Text.years(years.value())))
                .orElseGet(() -> Message.of("verdict.convertMeteredControllerSave", changeCode(), saved, goods(), comparedWith));
    }

    private Message costs(double morePerYear) {
        return morePerYear > 0 ? Message.of("verdict.saltWaterCostYear", whole(morePerYear))
                : Message.of("verdict.saltWaterCostYearLess", whole(-morePerYear));
    }

    private Message replaced() {
        Rung replacement = ladder.rung(Step.REPLACE);
        if (ladder.rung(Step.AS_FOUND).option().isEmpty()) {
            return replacement.serves() ? Message.of("verdict.softenerResinKeepsWater", resin(replacement))
                    : Message.of("verdict.noSoftenerTriedKeeps");
        }
        if (replacement.what().goods().isPresent() && replacement.serves()) {
            return larger(Message.of("verdict.noSettingSoftenerKeeps"));
        }
        return replacement.serves() ? Message.sentences(Message.of("verdict.replaceSoftenerOneResin", resin(replacement)),
                costs(-replacement.overAsFound().orElseThrow().savedPerYear()))
                : Message.of("verdict.noSettingSoftenerKeepsWater");
    }

    private Message resin(Rung rung) {
        return Text.rounded(units.resinVolume(rung.option().orElseThrow().setup().softener().bed().resinLitres()));
    }

    /** Effects of not softening, and their evidence. */
    Message withoutSoftening() {
        Message hardness = Text.rounded(HardnessQuantity.forReader(duty.hardness().hardnessMgPerL(), explanation));
        return ladder.rung(Step.NONE_NEEDED).obstacles().isEmpty() ? Message.of("verdict.withoutSofteningWaterStaysSoft", hardness)
                : Message.of("verdict.withoutSofteningHardnessStays", hardness);
    }

    Message action() {
        Optional<Rung> interim = ladder.interim();
        if (interim.isPresent()) {
            return Message.sentences(Message.of("verdict.untilDecided"),
                    instruction(interim.get().option().orElseThrow()));
        }
        return switch (ladder.verdict().step()) {
            case NONE_NEEDED -> ladder.rung(Step.AS_FOUND).option().isPresent() ? Message.of("verdict.putSoftenerBypass")
                    : Message.of("verdict.doBuySoftenerHardness");
            case TREAT_FIRST -> Message.of("verdict.treatmentChosenFullWater");
            case AS_FOUND -> Message.of("verdict.changeOnlyWhatProtects");
            default -> taken().option().filter(option -> taken().serves())
                    .map(this::instruction)
                    .orElseGet(() -> Message.of("verdict.waterTreatedOrUse"));
        };
    }

    private Message instruction(Rung.Option option) {
        return SettingsInWords.instruction(option.setup(), ladder.rung(Step.AS_FOUND).option().map(found -> found.setup().policy())
                .orElse(option.setup().policy()), duty, units);
    }

    List<Message> wouldChange() {
        List<Message> changes = new ArrayList<>();
        Step step = ladder.verdict().step();
        if (step == Step.NONE_NEEDED || step == Step.TREAT_FIRST) {
            return changes;
        }
        taken().option().filter(option -> step != Step.AS_FOUND).ifPresent(option -> ladder.questions().forEach(question ->
                changes.add(unread(question, option))));
        ladder.interim().ifPresent(interim -> changes.add(Message.of("verdict.onlyCorrectIf",
                whole(taken().overBelow().orElseThrow().worthUpTo()))));
        taken().counted().filter(over -> over.worth().isPresent() && over.pays() && taken().option().orElseThrow().outlay().orElseThrow()
                .investment() > 0).ifPresent(over -> changes.add(Message.of("verdict.changeStopsPayingIf",
                whole(over.worthUpTo()))));
        if (duty.hardness().totalMgPerL() <= MODERATE_MG_PER_L) {
            ladder.rung(Step.NONE_NEEDED).overAsFound().filter(over -> over.savedPerYear() > 0).ifPresent(over -> changes.add(Message.of(
                    "verdict.softeningCostsLeastYear", whole(over.savedPerYear()))));
        }
        ladder.worthAPrice().map(rung -> pays(rung.step(), rung.overBelow().orElseThrow())).ifPresent(changes::add);
        taken().counted().filter(over -> over.savedPerYearOverSeasonal().isPresent() && over.savedPerYearOverSeasonal().getAsDouble()
                < over.savedPerYear()).map(over -> seasonal(over.savedPerYearOverSeasonal().getAsDouble()))
                .ifPresent(changes::add);
        if (step.compareTo(Step.CONVERT) < 0) {
            lacks().ifPresent(changes::add);
        }
        if (duty.useIsHardlyKnown()) {
            changes.add(Message.of("verdict.readWaterMeterFour"));
        }
        return List.copyOf(changes);
    }

    /** The saving, over the plausible range of an unread setting. */
    private Message unread(Question question, Rung.Option option) {
        double one = cost.ofYear(question.low().year().totals()) - option.costPerYear();
        double other = cost.ofYear(question.high().year().totals()) - option.costPerYear();
        return Message.sentences(Message.of("verdict.readOffSettingGiven", units.saying(question.setting())),
                SavedRange.inWords(Math.min(one, other), Math.max(one, other), currency));
    }

    private Message seasonal(double saved) {
        return saved > 0 ? Message.of("verdict.savesOnlyYearOver", whole(saved))
                : Message.of("verdict.savesNothingOverClock");
    }

    /** Conditions not included in the price of the advice, or of converting, if a price is given. */
    private Optional<Message> lacks() {
        return Stream.of(taken(), ladder.rung(Step.CONVERT)).flatMap(rung -> rung.option().stream())
                .filter(option -> option.outlay().isPresent() && !option.unpriced().isEmpty())
                .map(option -> Message.of("verdict.priceDoesYetInclude",
                        Message.joined(Joint.AND, option.unpriced().stream().map(units::saying).toList()))).findFirst();
    }

    private Message pays(Step step, Increment over) {
        Message limit = whole(over.worthUpTo());
        return switch (step) {
            case CONVERT -> Message.of("verdict.convertingPaysIfCosts", limit);
            case IMPROVE -> switch (improvement()) {
                case SECOND_TANK -> Message.of("verdict.secondTankPaysIf", limit);
                case LARGER_BED -> Message.of("verdict.largerResinTankPays", limit);
                default -> Message.of("verdict.counterCurrentRegenerationPays", limit);
            };
            default -> Message.of("verdict.replacingSoftenerPaysIf", limit);
        };
    }

    private Message whole(double amount) {
        return Text.rounded(amount, currency);
    }

    /** Whether two counts of days are a day apart, so that whole days do not make them equal, or further apart than they are. */
    private static boolean differ(double then, double now) {
        return Math.abs(then - now) >= 1;
    }

    private static BigDecimal days(double perYear) {
        return Text.whole(perYear);
    }
}
