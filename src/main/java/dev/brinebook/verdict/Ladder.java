// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.verdict;

import dev.brinebook.payback.Outlay;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.DoseSearch;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.softener.Fit;
import dev.brinebook.softener.MeterStart;
import dev.brinebook.softener.MeteringWorth;
import dev.brinebook.softener.Question;
import dev.brinebook.softener.Review;
import dev.brinebook.softener.SetRight;
import dev.brinebook.softener.Sizing;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.water.Treatment;
import dev.brinebook.water.WaterCautions;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The steps to improve a softener, from the smallest to the largest, each judged by its own cost: it is compared with the cheapest step
 * below it that keeps to the same service standard, so that a meter is not credited with what correcting the settings saves.
 *
 * <pre>a step is taken when  LCC(below) - LCC(step) &gt; 0;  then the next is compared with it</pre>
 *
 * <p>LCC life-cycle cost over the horizon. Hard water has no price: a step that misses the standard is never the cheapest.
 * Source: [NIST-HB135] incremental ranking of mutually exclusive alternatives by first cost.
 *
 * @param rungs all steps, from the least to the most
 * @param others improvements and goods that were evaluated beside those of the rungs
 * @param verdict the step to take
 * @param treatments what the water needs first, in order; empty where it can be softened as it is
 * @param questions settings of the existing softener that were not read and matter
 * @param choice how the dose of the meter on this bed was chosen; absent without a softener
 * @param right the existing control, set right; absent without a softener
 * @param worth saving of that meter over the clock set right; absent without a softener
 */
public record Ladder(List<Rung> rungs, List<Rung> others, Verdict verdict, List<Treatment> treatments, List<Question> questions,
        Optional<DoseChoice> choice, Optional<SetRight> right, Optional<MeteringWorth> worth) {

    /** Hardness up to which water is soft, mg/L as CaCO3. Source: [USGS-HARDNESS]. */
    public static final double SOFT_MG_PER_L = 60;
    public Ladder {
        rungs = List.copyOf(rungs);
        others = List.copyOf(others);
        treatments = List.copyOf(treatments);
        questions = List.copyOf(questions);
    }

    /** The first step above that of the verdict which would pay at a price that is worth naming. */
    public Optional<Rung> worthAPrice() {
        return rungs.stream().filter(rung -> rung.step().compareTo(verdict.step()) > 0 && rung.serves())
                .filter(rung -> rung.overBelow().filter(over -> Climb.savesEnough(over, rung(over.over()))).isPresent()).findFirst();
    }

    /** The free settings that serve until the step of the verdict, whose price is not known, is bought. */
    public Optional<Rung> interim() {
        return verdict.step().compareTo(Step.SET_RIGHT) <= 0 ? Optional.empty()
                : rung(verdict.step()).overBelow().filter(over -> over.worth().isEmpty()).map(over -> rung(over.over()))
                        .filter(Rung::serves);
    }

    /** The rung of a step. */
    public Rung rung(Step step) {
        return rungs.get(step.ordinal());
    }

    /** Those of {@code fit}, of the softener that was found, which its size makes and no setting of it cures. */
    public List<Fit.Shortcoming> shortcomings(Fit fit) {
        return shortcomings(fit, this::rung);
    }

    private static List<Fit.Shortcoming> shortcomings(Fit fit, Function<Step, Rung> rungs) {
        boolean cured = Stream.of(Step.AS_FOUND, Step.SET_RIGHT, Step.CONVERT).anyMatch(step -> rungs.apply(step).serves());
        return fit.shortcomings().stream().filter(one -> one.isOfSize() || one == Fit.Shortcoming.INTERVAL_TOO_SHORT
                || !cured && one != Fit.Shortcoming.WATER_UNTREATED).toList();
    }

    /** The steps from a softener that was found. */
    public static Ladder of(ExistingSoftener found, DesignConditions duty, Terms terms) {
        Softener softener = Review.withRightDrain(found, duty);
        MeterStart start = MeterStart.of(found.policy());
        DoseChoice choice = DoseSearch.cheapest(softener, duty, terms.running(), start);
        MeteringWorth worth = MeteringWorth.of(choice.best(), duty, terms.running());
        List<Treatment> treatments = Treatment.neededBy(duty.water());
        Map<Step, Rung> barred = barred(duty, treatments);
        Climb climb = new Climb(duty, terms, barred);
        SoftenerSettings asFound = found.setup();
        YearlyTotals year = duty.year(asFound.policy(), asFound.regeneration(duty.water().temperatureCelsius()));
        climb.add(Step.AS_FOUND, new Rung.Option(asFound, year, terms.running().ofYear(year), terms.outlay(Step.AS_FOUND), List.of(),
                Optional.empty(), Optional.empty()),
                duty.isServed(asFound.policy(), asFound.regeneration(duty.water().temperatureCelsius())));
        boolean byClock = found.policy().byClock();
        SetRight best = byClock ? SetRight.ofClock(softener, worth, duty) : SetRight.ofMeter(choice.best());
        SetRight right = duty.practice().keepsCloseSettings() ? best.reachedFrom(found, duty, terms.running()) : best;
        climb.add(Step.SET_RIGHT, option(right, terms, Step.SET_RIGHT), right.keepsStandard());
        if (byClock) {
            SetRight meter = SetRight.ofMeter(choice.best());
            climb.add(Step.CONVERT, option(meter, terms, Step.CONVERT), meter.keepsStandard());
        } else {
            climb.bar(Step.CONVERT, Obstacle.METERED_ALREADY);
        }
        Fit fit = found.fit(duty);
        TooSmall size = new TooSmall(climb, fit, duty);
        improve(climb, choice, size, terms);
        replace(climb, choice, size, terms);
        List<Question> questions = Question.of(found, duty);
        boolean unread = !questions.isEmpty() || !fit.notChecked(found.datasheet()).isEmpty();
        return new Ladder(climb.rungs(), climb.others(), Verdict.of(climb, size.cure(), unread), treatments, questions,
                Optional.of(choice), Optional.of(right), Optional.of(worth));
    }

    /** The steps where no softener is there yet, and one was chosen. */
    public static Ladder withoutSoftener(Sizing.Ranked chosen, DesignConditions duty, Terms terms) {
        List<Treatment> treatments = Treatment.neededBy(duty.water());
        Climb climb = new Climb(duty, terms, barred(duty, treatments));
        List.of(Step.AS_FOUND, Step.SET_RIGHT, Step.CONVERT, Step.IMPROVE).forEach(step -> climb.bar(step, Obstacle.NO_SOFTENER));
        SetRight set = SetRight.ofMeter(chosen.option());
        climb.add(Step.REPLACE, option(set, terms, Step.REPLACE, terms.outlay(chosen.candidate())),
                set.keepsStandard() && chosen.fit().fits());
        return new Ladder(climb.rungs(), climb.others(), Verdict.of(climb, Optional.empty(), !chosen.notChecked().isEmpty()),
                treatments, List.of(),
                Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Map<Step, Rung> barred(DesignConditions duty, List<Treatment> treatments) {
        Map<Step, Rung> barred = new EnumMap<>(Step.class);
        boolean soft = duty.hardness().realMgPerL() <= SOFT_MG_PER_L;
        barred.put(Step.NONE_NEEDED, soft ? Rung.barred(Step.NONE_NEEDED) : Rung.barred(Step.NONE_NEEDED, Obstacle.HARD_WATER));
        barred.put(Step.TREAT_FIRST, !treatments.isEmpty() ? Rung.barred(Step.TREAT_FIRST)
                : Rung.barred(Step.TREAT_FIRST, duty.practice().countsDaysOfUse() && WaterCautions.adviseTreatment(duty.water())
                        ? Obstacle.TREATMENT_ADVISED
                        : Obstacle.NOTHING_TO_TREAT));
        return barred;
    }

    private static void improve(Climb climb, DoseChoice choice, TooSmall size, Terms terms) {
        Improvements improvements = new Improvements(choice.best(), size.duty(), terms.running());
        climb.addBest(Stream.of(Improvement.values()).map(improvements::of).map(improved -> {
            Rung.What what = Rung.What.of(improved.improvement());
            return improved.set().map(set -> climb.rung(Step.IMPROVE, what, option(set, terms, Step.IMPROVE,
                    terms.outlay(improved.improvement())), set.keepsStandard(),
                    improved.obstacle().or(() -> size.obstacle(improved))))
                    .orElseGet(() -> Rung.barred(Step.IMPROVE, what, improved.obstacle().orElseThrow()));
        }).toList());
    }

    /** The best of the goods; without any the smallest standard bed that is large enough, where this one is not. */
    private static void replace(Climb climb, DoseChoice choice, TooSmall size, Terms terms) {
        if (!terms.goods().isEmpty()) {
            climb.addBest(terms.goods().stream().map(goods -> replaced(climb, goods, size.duty(), terms)).toList());
        }
        if (climb.has(Step.REPLACE) && climb.rung(Step.REPLACE).serves() || climb.serves() && !terms.goods().isEmpty()) {
            return;
        }
        Optional<SetRight> larger = climb.serves() && !size.isTooSmall() ? Optional.empty()
                : size.larger(choice.best().dosed().softener(), terms.running()).map(SetRight::ofMeter);
        if (larger.isPresent()) {
            climb.add(Step.REPLACE, option(larger.get(), terms, Step.REPLACE), true);
        } else if (terms.goods().isEmpty()) {
            climb.bar(Step.REPLACE, !climb.serves() ? Obstacle.NONE_LARGE_ENOUGH
                    : shortcomings(size.fit(), climb::rung).isEmpty() ? Obstacle.LARGE_ENOUGH : Obstacle.NONE_GIVEN);
        }
    }

    private static Rung replaced(Climb climb, Sizing.Candidate goods, DesignConditions duty, Terms terms) {
        Sizing.Ranked tried = Sizing.tried(goods, duty.forNewBed(), terms.running());
        SetRight set = SetRight.ofMeter(tried.option());
        boolean fits = tried.fit().shortcomings().stream().noneMatch(Fit.Shortcoming::isOfSize);
        return climb.rung(Step.REPLACE, Rung.What.of(goods.name()), option(set, terms, Step.REPLACE,
                terms.outlay(goods)), set.keepsStandard(), fits ? Optional.empty() : Optional.of(Obstacle.DOES_NOT_FIT));
    }

    private static Rung.Option option(SetRight set, Terms terms, Step step) {
        return option(set, terms, step, terms.outlay(step));
    }

    private static Rung.Option option(SetRight set, Terms terms, Step step, Optional<Outlay> outlay) {
        return new Rung.Option(set.setup(), set.year(), terms.running().ofYear(set.year()), outlay, terms.unpriced(step),
                set.everySeason(), set.metered());
    }
}
