package dev.brinebook.answer.verdict;

import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.AgainstBaseline;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.Question;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.verdict.Improvement;
import dev.brinebook.verdict.Increment;
import dev.brinebook.verdict.Ladder;
import dev.brinebook.verdict.Rung;
import dev.brinebook.verdict.Step;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A verdict as a practitioner would say it to a customer. Source of what not softening leaves: [SWET-2011]. */
final class VerdictInWords {

    /** Up to here water is moderately hard, mg/L as CaCO3. Source: [USGS-HARDNESS]. */
    private static final double MODERATE_MG_PER_L = 120;
    private static final MathContext SPOKEN = new MathContext(2, RoundingMode.HALF_EVEN);

    private final Ladder ladder;
    private final Duty duty;
    private final RunningCost cost;
    private final Currency currency;
    private final AnswerUnits units;

    VerdictInWords(Ladder ladder, Duty duty, RunningCost cost, Currency currency, AnswerUnits units) {
        this.ladder = ladder;
        this.cost = cost;
        this.duty = duty;
        this.currency = currency;
        this.units = units;
    }

    private Rung taken() {
        return ladder.rung(ladder.verdict().step());
    }

    private Improvement improvement() {
        return ladder.rung(Step.IMPROVE).what().improvement().orElseThrow();
    }

    Message sentence() {
        return switch (ladder.verdict().step()) {
            case NONE_NEEDED -> soft();
            case TREAT_FIRST -> Message.of("Treat the water before softening it: {0}.", Message.joined("; ",
                    ladder.treatments().stream().map(units::saying).toList()));
            case AS_FOUND -> Message.of("Leave the softener as it is: no change whose cost is known pays for itself.");
            case SET_RIGHT -> corrected();
            case CONVERT -> withLacks(larger(Message.of("Convert to a metered controller"),
                    Message.of("no setting of the clock keeps the water soft often enough")));
            case IMPROVE -> withLacks(larger(switch (improvement()) {
                case SECOND_TANK -> Message.of("Add a second tank");
                case LARGER_BED -> Message.of("Fit a larger tank of resin");
                default -> Message.of("Draw the brine against the direction of service");
            }, Message.of("no setting of this softener keeps the water soft often enough")));
            case REPLACE -> withLacks(replaced());
        };
    }

    private Message withLacks(Message sentence) {
        return Message.joined(" ", Stream.concat(Stream.of(sentence), lacks().stream()).toList());
    }

    private Message soft() {
        Message hardness = Text.of(units.hardness(duty.hardness().hardnessMgPerL()));
        return ladder.rung(Step.NONE_NEEDED).overAsFound().map(over -> Message.of("With {0} the water is soft. The softener changes little"
                + " and costs {1} a year.", hardness, whole(over.savedPerYear()))).orElseGet(() -> Message.of("With {0} the water is soft."
                        + " A softener would change little.", hardness));
    }

    /** The settings, and what the next step would do where they cost more than it would. */
    private Message corrected() {
        Rung right = taken();
        Optional<Rung> cheaper = ladder.worthAPrice().filter(rung -> rung.option().orElseThrow().outlay().isEmpty());
        double more = right.option().orElseThrow().costPerYear()
                - ladder.rung(Step.AS_FOUND).option().orElseThrow().costPerYear();
        return more > 0 && cheaper.isPresent() ? Message.joined(" ", List.of(settings(),
                pays(cheaper.get().step(), cheaper.get().overBelow().orElseThrow()))) : settings();
    }

    private Message settings() {
        Rung.Option right = taken().option().orElseThrow();
        Rung asFound = ladder.rung(Step.AS_FOUND);
        if (asFound.serves()) {
            return Message.of("Correct the settings, free: {0} a year less.", whole(taken().overAsFound().orElseThrow().savedPerYear()));
        }
        double more = right.costPerYear() - asFound.option().orElseThrow().costPerYear();
        double now = asFound.option().orElseThrow().year().hardDays();
        Message why = now <= duty.standard().hardDaysPerYear() ? Message.of("Correct the settings: as they are, hard water passes as soon"
                + " as a little more is used or the bed restores a little less")
                : Message.of("Correct the settings: hard water on about {0} instead of {1}", days(right.year().hardDays()), days(now));
        return Math.abs(more) < 1 ? Message.of("{0}. This costs nothing.", why)
                : Message.of("{0}. {1}", why, costs(more));
    }

    private Message larger(Message what, Message need) {
        Optional<Increment> over = least(taken());
        Optional<BigDecimal> years = over.flatMap(Increment::worth).map(AgainstBaseline::simplePaybackYears)
                .filter(figure -> figure.exists()).map(figure -> BigDecimal.valueOf(figure.value()).round(SPOKEN));
        Rung.Option option = taken().option().orElseThrow();
        Rung.Option found = ladder.rung(Step.AS_FOUND).option().orElseThrow();
        Message days = Message.of("Hard water passes on about {0} instead of {1}.", days(option.year().hardDays()),
                days(found.year().hardDays()));
        if (taken().overBelow().map(below -> !ladder.rung(below.over()).serves()).orElse(true)) {
            return Message.joined(" ", List.of(Message.of("{0}: {1}.", what, need), days,
                    costs(option.costPerYear() - found.costPerYear())));
        }
        if (over.get().savedPerYear() <= 0) {
            return Message.joined(" ", List.of(Message.of("{0}.", what), days, costs(-over.get().savedPerYear())));
        }
        Message saved = switch (over.get().over()) {
            case SET_RIGHT -> Message.of("it saves {0} a year over the corrected settings", whole(over.get().savedPerYear()));
            case CONVERT -> Message.of("it saves {0} a year over converting alone", whole(over.get().savedPerYear()));
            case IMPROVE -> Message.of("it saves {0} a year over improving the softener", whole(over.get().savedPerYear()));
            default -> Message.of("it saves {0} a year", whole(over.get().savedPerYear()));
        };
        Message worth = years.isPresent() ? Message.of("{0}: {1} and pays back in {2}.", what, saved,
                Message.counted("{0} year", "{0} years", years.get())) : Message.of("{0}: {1}.", what, saved);
        List<Message> sentences = new ArrayList<>(List.of(worth));
        if (over.get().worth().isPresent() && !over.get().pays()) {
            sentences.add(Message.of("It does not pay for itself: it is for the soft water."));
        }
        if (!ladder.rung(Step.AS_FOUND).serves()) {
            sentences.add(days);
        }
        return Message.joined(" ", sentences);
    }

    private Message costs(double morePerYear) {
        return morePerYear > 0 ? Message.of("Salt and water cost {0} a year more.", whole(morePerYear))
                : Message.of("Salt and water cost {0} a year less.", whole(-morePerYear));
    }

    /** What it is worth over the step below or over what was found, whichever is less: nothing is credited twice. */
    private static Optional<Increment> least(Rung rung) {
        return Stream.concat(rung.overBelow().stream(), rung.overAsFound().stream())
                .min(Comparator.comparingDouble(Increment::savedPerYear));
    }

    private Message replaced() {
        Rung replacement = ladder.rung(Step.REPLACE);
        if (ladder.rung(Step.AS_FOUND).option().isEmpty()) {
            return replacement.serves() ? Message.of("A softener with {0} of resin keeps the water soft.", resin(replacement))
                    : Message.of("No softener that was tried keeps the water soft often enough.");
        }
        if (replacement.what().goods().isPresent() && replacement.serves()) {
            return larger(Message.of("Replace the softener by {0}", replacement.what().goods().get()),
                    Message.of("no setting of this softener keeps the water soft often enough"));
        }
        return replacement.serves() ? Message.of("Replace the softener: no setting of this one keeps the water soft often enough, and {0}"
                + " of resin does.", resin(replacement))
                : Message.of("No setting of this softener keeps the water soft often enough, and no standard size does.");
    }

    private Message resin(Rung rung) {
        return Text.of(units.resinVolume(rung.option().orElseThrow().setup().softener().bed().resinLitres()));
    }

    /** What not softening leaves, with what is known of it. */
    Message withoutSoftening() {
        return Message.of("Without softening {0} stays in the water: scale in heaters and on fixtures, and more soap. Hard water has no"
                + " price here. A trial found no benefit of softened water for eczema.",
                Text.of(units.hardness(duty.hardness().hardnessMgPerL())));
    }

    Message action() {
        return switch (ladder.verdict().step()) {
            case NONE_NEEDED -> ladder.rung(Step.AS_FOUND).option().isPresent() ? Message.of("Put the softener in bypass.")
                    : Message.of("Buy no softener for the hardness of this water.");
            case TREAT_FIRST -> Message.of("Have the treatment chosen from a full water test, then ask again with the treated water.");
            case AS_FOUND -> Message.of("Change nothing but what protects the bed.");
            default -> taken().option().filter(option -> taken().serves())
                    .map(option -> Message.of("Set it to {0}.", SettingsInWords.of(option.setup(), units)))
                    .orElseGet(() -> Message.of("Have the water treated, or the use of soft water reduced."));
        };
    }

    List<Message> wouldChange() {
        List<Message> changes = new ArrayList<>();
        Step step = ladder.verdict().step();
        if (step == Step.NONE_NEEDED || step == Step.TREAT_FIRST) {
            return changes;
        }
        taken().option().filter(option -> step != Step.AS_FOUND).ifPresent(option -> ladder.questions().forEach(question ->
                changes.add(unread(question, option))));
        least(taken()).filter(over -> over.worth().isPresent() && over.pays() && taken().option().orElseThrow().outlay().orElseThrow()
                .investment() > 0).ifPresent(over -> changes.add(Message.of("It stops paying if it costs more than {0}.",
                whole(over.worthUpTo()))));
        if (duty.hardness().totalMgPerL() <= MODERATE_MG_PER_L) {
            ladder.rung(Step.NONE_NEEDED).overAsFound().filter(over -> over.savedPerYear() > 0).ifPresent(over -> changes.add(Message.of(
                    "Not softening costs least, {0} a year less: then some scale and more soap stay.", whole(over.savedPerYear()))));
        }
        ladder.worthAPrice().map(rung -> pays(rung.step(), rung.overBelow().orElseThrow())).ifPresent(changes::add);
        taken().overBelow().filter(over -> over.savedPerYearOverSeasonal().isPresent() && over.savedPerYearOverSeasonal().getAsDouble()
                < least(taken()).orElseThrow().savedPerYear()).map(over -> seasonal(over.savedPerYearOverSeasonal().getAsDouble()))
                .ifPresent(changes::add);
        if (step.compareTo(Step.CONVERT) < 0) {
            lacks().ifPresent(changes::add);
        }
        if (duty.useIsHardlyKnown()) {
            changes.add(Message.of("Four weeks of water meter readings: the use is only guessed from the number of people."));
        }
        return List.copyOf(changes);
    }

    /** What is saved, by what an unread setting may be. */
    private Message unread(Question question, Rung.Option option) {
        double one = cost.ofYear(question.low().year().totals()) - option.costPerYear();
        double other = cost.ofYear(question.high().year().totals()) - option.costPerYear();
        return Message.of("Read off the {0}, which was not given: depending on it, {1} to {2} a year are saved.",
                units.saying(question.setting()), whole(Math.min(one, other)), whole(Math.max(one, other)));
    }

    private Message seasonal(double saved) {
        return saved > 0 ? Message.of("It saves only {0} a year over a clock that somebody sets again every season.", whole(saved))
                : Message.of("It saves nothing over a clock that somebody sets again every season.");
    }

    /** What the price of what is advised, or of converting, leaves out, if it is given and leaves anything out. */
    private Optional<Message> lacks() {
        return Stream.of(taken(), ladder.rung(Step.CONVERT)).flatMap(rung -> rung.option().stream())
                .filter(option -> option.outlay().isPresent() && !option.unpriced().isEmpty())
                .map(option -> Message.of("The price does not yet include: {0}.",
                        Message.joined(", ", option.unpriced().stream().map(units::saying).toList()))).findFirst();
    }

    private Message pays(Step step, Increment over) {
        Message limit = whole(over.worthUpTo());
        return switch (step) {
            case CONVERT -> Message.of("Converting pays if it costs less than {0}.", limit);
            case IMPROVE -> switch (improvement()) {
                case SECOND_TANK -> Message.of("A second tank pays if it costs less than {0}.", limit);
                case LARGER_BED -> Message.of("A larger tank of resin pays if it costs less than {0}.", limit);
                default -> Message.of("Brine against the direction of service pays if it costs less than {0}.", limit);
            };
            default -> Message.of("Replacing pays if it costs less than {0}.", limit);
        };
    }

    /** Money to the whole unit: nobody knows it better. */
    private Message whole(double amount) {
        return new Money(BigDecimal.valueOf(amount).setScale(0, RoundingMode.HALF_EVEN), currency.getCurrencyCode()).inWords();
    }

    private static Message days(double perYear) {
        BigDecimal spoken = BigDecimal.valueOf(perYear).setScale(perYear < 10 ? 1 : 0, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return Message.counted("{0} day a year", "{0} days a year", spoken.scale() < 0 ? spoken.setScale(0) : spoken);
    }
}
