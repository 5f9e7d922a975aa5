package dev.brinebook.verdict;

import dev.brinebook.payback.AgainstBaseline;
import dev.brinebook.payback.Alternative;
import dev.brinebook.payback.YearlyCost;
import dev.brinebook.payback.YearlyUse;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.Found;
import dev.brinebook.softener.MeterStart;
import dev.brinebook.softener.MeteringWorth;
import dev.brinebook.softener.Review;
import dev.brinebook.softener.ServiceRemedy;
import dev.brinebook.softener.SetRight;
import dev.brinebook.softener.Setup;
import dev.brinebook.softener.Softener;
import dev.brinebook.water.Treatment;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What to do about a softener, from the least to the most, each step worth its own money: it is held against the cheapest step
 * below it that keeps to the same service standard, so that a meter is not credited with what correcting the settings saves.
 *
 * <pre>a step is taken when  LCC(below) - LCC(step) &gt; 0;  then it is what the next is held against</pre>
 *
 * <p>LCC life-cycle cost over the horizon. Hard water has no price: a step that misses the standard is never the cheapest.
 * Source: [NIST-HB135] incremental ranking of mutually exclusive alternatives by first cost.
 *
 * @param rungs all steps, from the least to the most
 * @param verdict the step to take
 * @param treatments what the water needs first, in order; empty where it can be softened as it is
 * @param choice how the dose of the meter on this bed was chosen; absent without a softener
 * @param right the control found, set right; absent without a softener
 * @param worth what that meter saves over the clock set right; absent without a softener
 */
public record Ladder(List<Rung> rungs, Verdict verdict, List<Treatment> treatments, Optional<DoseChoice> choice,
        Optional<SetRight> right, Optional<MeteringWorth> worth) {

    /** Hardness up to which water is soft, mg/L as CaCO3. Source: [USGS-HARDNESS]. */
    public static final double SOFT_MG_PER_L = 60;
    /** A saving of a smaller share of the running cost is within what nobody can tell. */
    private static final double LEAST_SAVING_SHARE = DoseChoice.ASSUMED_EQUAL_COST_SHARE;

    public Ladder {
        rungs = List.copyOf(rungs);
        treatments = List.copyOf(treatments);
    }

    /** The rung of a step. */
    public Rung rung(Step step) {
        return rungs.get(step.ordinal());
    }

    /** The steps from a softener that was found. */
    public static Ladder of(Found found, Duty duty, Terms terms) {
        Softener softener = Review.withRightDrain(found, duty);
        MeterStart start = MeterStart.of(found.policy());
        DoseChoice choice = DoseChoice.cheapest(softener, duty, terms.running(), start);
        MeteringWorth worth = MeteringWorth.of(choice.best(), duty, terms.running());
        List<Treatment> treatments = Treatment.neededBy(duty.water());
        Map<Step, Rung> barred = barred(duty, treatments);
        Climb climb = new Climb(duty, terms, barred);
        Setup asFound = found.setup();
        YearlyTotals year = duty.year(asFound.policy(), asFound.regeneration(duty.water().temperatureCelsius()));
        climb.add(Step.AS_FOUND, option(asFound, year, terms, Step.AS_FOUND, Optional.empty()),
                duty.isServed(asFound.policy(), asFound.regeneration(duty.water().temperatureCelsius())));
        boolean byClock = found.policy().byClock();
        SetRight right = byClock ? SetRight.ofClock(softener, worth, duty) : SetRight.ofMeter(choice.best());
        climb.add(Step.SET_RIGHT, option(right.setup(), right.year(), terms, Step.SET_RIGHT, right.everySeason()),
                right.keepsStandard());
        if (byClock) {
            SetRight meter = SetRight.ofMeter(choice.best());
            climb.add(Step.CONVERT, option(meter.setup(), meter.year(), terms, Step.CONVERT, Optional.empty()), meter.keepsStandard());
        } else {
            climb.bar(Step.CONVERT, Obstacle.METERED_ALREADY);
        }
        if (start == MeterStart.TWIN) {
            climb.bar(Step.IMPROVE, Obstacle.TWIN_ALREADY);
        } else {
            SetRight twin = SetRight.ofMeter(DoseChoice.atOnce(softener, duty, terms.running(), MeterStart.TWIN));
            climb.add(Step.IMPROVE, option(twin.setup(), twin.year(), terms, Step.IMPROVE, Optional.empty()), twin.keepsStandard());
        }
        replace(climb, choice, duty, terms);
        return new Ladder(climb.rungs(), Verdict.of(climb), treatments, Optional.of(choice), Optional.of(right), Optional.of(worth));
    }

    /** The steps where no softener is there yet, and one was chosen. */
    public static Ladder withoutSoftener(DoseChoice.Option chosen, boolean fits, Duty duty, Terms terms) {
        List<Treatment> treatments = Treatment.neededBy(duty.water());
        Climb climb = new Climb(duty, terms, barred(duty, treatments));
        List.of(Step.AS_FOUND, Step.SET_RIGHT, Step.CONVERT, Step.IMPROVE).forEach(step -> climb.bar(step, Obstacle.NO_SOFTENER));
        SetRight set = SetRight.ofMeter(chosen);
        climb.add(Step.REPLACE, option(set.setup(), set.year(), terms, Step.REPLACE, Optional.empty()), set.keepsStandard() && fits);
        return new Ladder(climb.rungs(), Verdict.of(climb), treatments, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Map<Step, Rung> barred(Duty duty, List<Treatment> treatments) {
        Map<Step, Rung> barred = new EnumMap<>(Step.class);
        boolean soft = duty.hardness().totalMgPerL() <= SOFT_MG_PER_L;
        barred.put(Step.NONE_NEEDED, soft ? Rung.barred(Step.NONE_NEEDED) : Rung.barred(Step.NONE_NEEDED, Obstacle.HARD_WATER));
        barred.put(Step.TREAT_FIRST, treatments.isEmpty() ? Rung.barred(Step.TREAT_FIRST, Obstacle.NOTHING_TO_TREAT)
                : Rung.barred(Step.TREAT_FIRST));
        return barred;
    }

    /** The smallest standard bed that is large enough, where this one is not. */
    private static void replace(Climb climb, DoseChoice choice, Duty duty, Terms terms) {
        if (climb.serves()) {
            climb.bar(Step.REPLACE, Obstacle.LARGE_ENOUGH);
            return;
        }
        Optional<SetRight> larger = ServiceRemedy.largerBed(choice.best().dosed().softener(), duty, terms.running())
                .map(SetRight::ofMeter);
        if (larger.isPresent()) {
            climb.add(Step.REPLACE, option(larger.get().setup(), larger.get().year(), terms, Step.REPLACE, Optional.empty()), true);
        } else {
            climb.bar(Step.REPLACE, Obstacle.NONE_LARGE_ENOUGH);
        }
    }

    private static Rung.Option option(Setup setup, YearlyTotals year, Terms terms, Step step,
            Optional<MeteringWorth.Control> everySeason) {
        return new Rung.Option(setup, year, terms.running().ofYear(year), terms.outlay(step), terms.unpriced(step),
                everySeason);
    }

    /** The way up: each step against the cheapest below it that serves. */
    static final class Climb {

        private final Terms terms;
        private final Spread spread;
        private final Map<Step, Rung> rungs;
        private final Map<Step, double[]> costs = new EnumMap<>(Step.class);
        private Rung asFound;
        private Rung taken;

        Climb(Duty duty, Terms terms, Map<Step, Rung> barred) {
            this.terms = terms;
            spread = new Spread(duty, terms.running());
            rungs = new EnumMap<>(barred);
        }

        void bar(Step step, Obstacle obstacle) {
            rungs.put(step, Rung.barred(step, obstacle));
        }

        void add(Step step, Rung.Option option, boolean keepsStandard) {
            List<Obstacle> lacks = new ArrayList<>();
            if (!keepsStandard) {
                lacks.add(Obstacle.RUNS_HARD);
            }
            if (!option.setup().softener().holdsEndPoint(option.setup().countedDoseGramsPerLitre())) {
                lacks.add(Obstacle.LEAKS);
            }
            costs.put(step, spread.costs(option.setup()));
            Rung base = taken != null ? taken : asFound;
            Optional<Increment> overBelow = base == null ? Optional.empty() : Optional.of(increment(step, option, base));
            Optional<Increment> overAsFound = asFound == null ? Optional.empty()
                    : base == asFound ? overBelow : Optional.of(increment(step, option, asFound));
            Rung rung = new Rung(step, Optional.of(option), lacks, overBelow, overAsFound);
            rungs.put(step, rung);
            if (step == Step.AS_FOUND) {
                asFound = rung;
            }
            if (rung.serves() && (taken == null || isWorthIt(overBelow.orElseThrow(), taken))) {
                taken = rung;
            }
        }

        private static boolean isWorthIt(Increment over, Rung base) {
            return over.pays() && over.savedPerYear() > LEAST_SAVING_SHARE * base.option().orElseThrow().costPerYear();
        }

        private Increment increment(Step step, Rung.Option option, Rung base) {
            Rung.Option other = base.option().orElseThrow();
            double saved = other.costPerYear() - option.costPerYear();
            OptionalDouble seasonal = other.everySeason().map(control -> OptionalDouble.of(control.cost() - option.costPerYear()))
                    .orElse(OptionalDouble.empty());
            Optional<AgainstBaseline> worth = option.outlay().isPresent() && other.outlay().isPresent()
                    ? Optional.of(AgainstBaseline.of(alternative(step, option), alternative(base.step(), other), terms.horizonYears(),
                            terms.prices())) : Optional.empty();
            OptionalDouble chance = worth.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Spread.chance(saved,
                    spread.ofSaving(costs.get(step), costs.get(base.step())), worth.get().investment() / terms.worthToday(1)));
            return new Increment(base.step(), saved, seasonal, terms.worthToday(saved), worth, chance);
        }

        private Alternative alternative(Step step, Rung.Option option) {
            YearlyTotals year = option.year();
            return new Alternative(step.name(), option.outlay().orElseThrow(), YearlyCost.of(new YearlyUse(year.regenerations(),
                    year.saltGrams() / 1000, year.waterLitres(), 0), terms.prices()));
        }

        boolean serves() {
            return taken != null;
        }

        /** The step that is worth its cost, or the first that serves; none where no step does. */
        Optional<Rung> taken() {
            return Optional.ofNullable(taken);
        }

        Rung rung(Step step) {
            return rungs.get(step);
        }

        List<Rung> rungs() {
            return List.copyOf(rungs.values());
        }
    }
}
