// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.verdict;

import dev.brinebook.payback.AgainstBaseline;
import dev.brinebook.payback.Alternative;
import dev.brinebook.payback.Outlay;
import dev.brinebook.payback.YearlyCost;
import dev.brinebook.payback.YearlyUse;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.SoftenerSettings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The way up: each step against the cheapest below it that serves. */
final class Climb {

    private static final double ROUNDING = 1e-6;
    /** A smaller share of the running cost than this cannot be distinguished from no saving. */
    private static final double LEAST_SAVING_SHARE = DoseChoice.ASSUMED_EQUAL_COST_SHARE;

    private final DesignConditions duty;
    private final Terms terms;
    private final Spread spread;
    private final Map<Step, Rung> rungs;
    private final List<Rung> others = new ArrayList<>();
    private final Map<Rung.Option, double[]> costs = new IdentityHashMap<>();
    private Rung asFound;
    private Rung taken;

    Climb(DesignConditions duty, Terms terms, Map<Step, Rung> barred) {
        this.duty = duty;
        this.terms = terms;
        spread = new Spread(duty, terms.running());
        rungs = new EnumMap<>(barred);
    }

    void bar(Step step, Obstacle obstacle) {
        rungs.put(step, Rung.barred(step, obstacle));
    }

    void add(Step step, Rung.Option option, boolean keepsStandard) {
        put(rung(step, Rung.What.ONLY, option, keepsStandard, Optional.empty()));
    }

    /** The one of them that is worth most over what is below, of those that serve; the rest are kept beside. */
    void addBest(List<Rung> one) {
        Rung best = one.stream().max(Comparator.comparing(Rung::serves)
                .thenComparing(rung -> !isPriced(taken) && isPriced(rung))
                .thenComparing(rung -> rung.overBelow().filter(Increment::pays).isPresent())
                .thenComparing(rung -> rung.option().isPresent())
                .thenComparingDouble(rung -> rung.overBelow().map(Climb::worth).orElse(Double.NEGATIVE_INFINITY))).orElseThrow();
        one.stream().filter(rung -> rung != best).forEach(others::add);
        put(best);
    }

    private static boolean isPriced(Rung rung) {
        return rung != null && rung.option().flatMap(Rung.Option::outlay).isPresent();
    }

    private static double worth(Increment over) {
        return over.pays() ? over.worth().orElseThrow().netPresentValue() : over.worthUpTo();
    }

    /** A step against what is below it, which is not taken yet. */
    Rung rung(Step step, Rung.What what, Rung.Option option, boolean keepsStandard, Optional<Obstacle> obstacle) {
        Rung base = isPriced(taken) ? taken : asFound;
        Optional<Increment> overBelow = base == null ? Optional.empty() : Optional.of(increment(step, option, base));
        Optional<Increment> overAsFound = asFound == null ? Optional.empty()
                : base == asFound ? overBelow : Optional.of(increment(step, option, asFound));
        return new Rung(step, what, Optional.of(option), lacks(option, duty, keepsStandard, obstacle), overBelow, overAsFound);
    }

    private void put(Rung rung) {
        rungs.put(rung.step(), rung);
        if (rung.step() == Step.AS_FOUND) {
            asFound = rung;
            Rung none = rungs.get(Step.NONE_NEEDED);
            rungs.put(Step.NONE_NEEDED, new Rung(Step.NONE_NEEDED, none.what(), Optional.empty(), none.obstacles(), Optional.empty(),
                    Optional.of(withoutSoftening(rung.option().orElseThrow()))));
        }
        if (rung.serves() && (taken == null || !isPriced(taken) && isPriced(rung)
                || isPriced(taken) && isWorthIt(rung.overBelow().orElseThrow(), taken))) {
            taken = rung;
        }
    }

    private static boolean isWorthIt(Increment over, Rung base) {
        boolean cheaperToHave = over.worth().map(worth -> worth.investment() < 0).orElse(false);
        return over.pays() && (cheaperToHave || savesEnough(over, base));
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
                spread.ofSaving(costs(option), costs(other)), worth.get().investment() / terms.worthToday(1)));
        return new Increment(base.step(), saved, seasonal, terms.worthToday(saved), worth, chance);
    }

    /** Nothing is used and nothing bought; what hard water does has no price. */
    private Increment withoutSoftening(Rung.Option option) {
        double saved = option.costPerYear();
        return new Increment(Step.AS_FOUND, saved, OptionalDouble.empty(), terms.worthToday(saved), Optional.of(AgainstBaseline.of(
                new Alternative(Step.NONE_NEEDED.name(), Outlay.NONE, YearlyCost.of(new YearlyUse(0, 0, 0, 0), terms.prices())),
                alternative(Step.AS_FOUND, option), terms.horizonYears(), terms.prices())),
                OptionalDouble.of(saved > 0 ? 1 : 0));
    }

    private double[] costs(Rung.Option option) {
        return costs.computeIfAbsent(option, one -> spread.costs(one.setup()));
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

    boolean has(Step step) {
        return rungs.containsKey(step);
    }

    List<Rung> others() {
        return others;
    }

    List<Rung> rungs() {
        return List.copyOf(rungs.values());
    }

    /** Whether the saving over a rung is large enough to be distinguished from none. */
    static boolean savesEnough(Increment over, Rung base) {
        return over.savedPerYear() > LEAST_SAVING_SHARE * base.option().orElseThrow().costPerYear();
    }

    /** Whether the extra cost over a rung is large enough to be distinguished from none. */
    static boolean costsEnough(Increment over, Rung base) {
        return -over.savedPerYear() > LEAST_SAVING_SHARE * base.option().orElseThrow().costPerYear();
    }

    /** Where the year of an immediate meter is simulated, it may have more hard days than the standard allowed for. */
    private static List<Obstacle> lacks(Rung.Option option, DesignConditions duty, boolean keepsStandard, Optional<Obstacle> obstacle) {
        List<Obstacle> lacks = new ArrayList<>();
        SoftenerSettings setup = option.setup();
        if (!keepsStandard || option.year().hardDays() > duty.standard().hardDaysPerYear() * (1 + ROUNDING)) {
            lacks.add(Obstacle.RUNS_HARD);
        }
        if (!setup.softener().holdsEndPoint(setup.countedDoseGramsPerLitre())) {
            lacks.add(Obstacle.LEAKS);
        }
        obstacle.ifPresent(lacks::add);
        return lacks;
    }
}
