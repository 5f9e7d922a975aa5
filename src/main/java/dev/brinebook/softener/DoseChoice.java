// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.OptionalResult;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.text.Localizable;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The salt dose and the reserve that {@link DoseSearch} found to cost least, what decides them, and what each limit costs.
 *
 * @param best the dose chosen
 * @param options every dose tried, lowest first
 */
public record DoseChoice(Option best, List<Option> options) {

    /** Lowest dose that is recommended: the lowest published point. Source: [CP-WORKING-TABLE]. */
    public static final double LOWEST_POUNDS_PER_CUBIC_FOOT = 6;
    /**
     * Lowest dose that is recommended for a water on which the lowest do not hold [TRADE-EFFICIENT]: the next published
     * point of [CP-WORKING-TABLE]; the booklet names no figure.
     */
    public static final double ASSUMED_LOWEST_POUNDS_ON_DIFFICULT_WATER = 8;
    /** Highest dose that is recommended: the highest published point. Source: [CP-WORKING-TABLE]. */
    public static final double HIGHEST_POUNDS_PER_CUBIC_FOOT = 15;
    /** Settings within this share of the lowest cost are equally good: prices and use are not known better. */
    public static final double ASSUMED_EQUAL_COST_SHARE = 0.02;
    /** Doses shown at most: every other one of 28, as those tried are more than 1/3 lb/ft3 apart, and the best. */
    public static final int MOST_SHOWN = 15;
    /** Approximate distance of the doses tried. */
    static final double STEP_POUNDS_PER_CUBIC_FOOT = 0.5;

    public DoseChoice {
        options = List.copyOf(options);
    }

    /**
     * One dose, with the reserve that goes with it.
     *
     * @param dosed the softener at the dose
     * @param regeneration what one regeneration restores and uses
     * @param settings the meter settings that go with it
     * @param year expected totals of a year
     * @param costPerYear salt and regeneration water of that year
     */
    public record Option(DosedSoftener dosed, Regeneration regeneration, MeterSettings settings, YearlyTotals year, double costPerYear) {

        /** Whether the water keeps below the end point of hardness. */
        public boolean holdsEndPoint() {
            return dosed.softener().holdsEndPoint(dosed.saltDoseGramsPerLitre());
        }

        /** Mean days between two regenerations; none where it never regenerates. */
        public OptionalResult intervalDays() {
            return year.intervalDays();
        }

        boolean isEfficient(DesignConditions duty) {
            return regeneration.capacityGrams() / regeneration.saltGrams() >= duty.minimumSaltEfficiencyGramsPerGram();
        }

        boolean lasts(DesignConditions duty) {
            return intervalDays().asOptional().orElse(Double.POSITIVE_INFINITY) >= duty.minimumIntervalDays();
        }

        boolean serves() {
            return settings.keepsStandard();
        }
    }

    /** What a setting should keep to, said as what it means not to. */
    public enum Limit implements Localizable {
        LEAKAGE,
        SERVICE_STANDARD,
        SALT_EFFICIENCY,
        INTERVAL;

        @Override
        public String textId() {
            return Localizable.idOf("doseLimit", this);
        }
    }

    /** What decides the dose, said as a sentence without capital and full stop. */
    public enum Bound implements Localizable {
        /** Less salt would regenerate too often and more would remove too little: the cost itself has its least here. */
        COST,
        /** A lower dose would leak more than the end point. */
        LEAKAGE,
        /** No lower dose keeps to the service standard. */
        SERVICE_STANDARD,
        /** A higher dose would be less efficient than required. */
        EFFICIENCY,
        LOWEST_RECOMMENDED,
        HIGHEST_RECOMMENDED;

        @Override
        public String textId() {
            return Localizable.idOf("doseBound", this);
        }
    }

    /**
     * What a limit costs.
     *
     * @param limit the limit
     * @param kept whether the settings chosen keep to it
     * @param costPerYear what it costs a year where it is kept, and what keeping to it would cost more where it is not
     */
    public record PricedLimit(Limit limit, boolean kept, double costPerYear) {
    }

    /** The choice among options, lowest dose first; {@link DoseSearch} says by what. */
    static DoseChoice of(List<Option> options, DesignConditions duty) {
        return new DoseChoice(least(candidates(options, duty).stream()).orElseThrow(), options);
    }

    /** The options of which the best is the one that costs least, whatever the prices. */
    public List<Option> candidates(DesignConditions duty) {
        return candidates(options, duty);
    }

    private static List<Option> candidates(List<Option> options, DesignConditions duty) {
        List<Option> held = options.stream().filter(Option::holdsEndPoint).toList();
        if (held.isEmpty()) {
            return List.of(options.get(options.size() - 1));
        }
        List<Option> serving = held.stream().filter(Option::serves).toList();
        if (serving.isEmpty()) {
            return List.of(held.stream().min(Comparator.comparingDouble(option -> option.year().hardDays())).orElseThrow());
        }
        List<Option> efficient = serving.stream().filter(option -> option.isEfficient(duty)).toList();
        return efficient.isEmpty() ? serving : efficient;
    }

    /** Of several that cost the same, the lowest dose. */
    private static Optional<Option> least(Stream<Option> options) {
        return options.min(Comparator.comparingDouble(Option::costPerYear));
    }

    /** Limits of the duty that the dose chosen does not keep to. */
    public List<Limit> unmet(DesignConditions duty) {
        List<Limit> unmet = new ArrayList<>();
        if (!best.holdsEndPoint()) {
            unmet.add(Limit.LEAKAGE);
        }
        if (!best.serves()) {
            unmet.add(Limit.SERVICE_STANDARD);
        }
        if (!best.isEfficient(duty)) {
            unmet.add(Limit.SALT_EFFICIENCY);
        }
        if (!best.lasts(duty)) {
            unmet.add(Limit.INTERVAL);
        }
        return unmet;
    }

    private Predicate<Option> keeps(DesignConditions duty, Limit left) {
        return option -> (left == Limit.LEAKAGE || option.holdsEndPoint()) && option.serves()
                && (left == Limit.SALT_EFFICIENCY || option.isEfficient(duty));
    }

    /** The doses that keep to all firm limits and cost as little as the best, within {@link #ASSUMED_EQUAL_COST_SHARE}. */
    public List<Option> band(DesignConditions duty) {
        List<Option> band = options.stream().filter(keeps(duty, null))
                .filter(option -> option.costPerYear() <= best.costPerYear() * (1 + ASSUMED_EQUAL_COST_SHARE)).toList();
        return band.contains(best) ? band : List.of(best);
    }

    /** The largest reserve with which the dose chosen costs as little, within {@link #ASSUMED_EQUAL_COST_SHARE}. */
    public double largestReserveLitres(DesignConditions duty, RunningCost cost) {
        if (best.settings().start() != MeterStart.DELAYED) {
            return 0;
        }
        double low = best.settings().reserveLitres();
        double high = best.settings().meterLitres();
        double step = duty.reserveStepLitres(high);
        int steps = (int) Math.floor((high - low) / step);
        int enough = 0;
        while (steps - enough > 1) {
            int middle = (enough + steps) / 2;
            if (reservedCost(low + middle * step, duty, cost)
                    <= best.costPerYear() * (1 + ASSUMED_EQUAL_COST_SHARE)) {
                enough = middle;
            } else {
                steps = middle;
            }
        }
        return low + enough * step;
    }

    private double reservedCost(double reserveLitres, DesignConditions duty, RunningCost cost) {
        return cost.ofYear(duty.year(MeterStart.DELAYED.policy(best.settings().meterLitres(), reserveLitres,
                best.settings().overrideDays()), best.regeneration()));
    }

    /** Limits that are kept at a price, and the interval where keeping it would have one. */
    public List<PricedLimit> prices(DesignConditions duty) {
        List<PricedLimit> prices = new ArrayList<>();
        for (Limit limit : List.of(Limit.LEAKAGE, Limit.SALT_EFFICIENCY)) {
            OptionalDouble without = options.stream().filter(keeps(duty, limit)).mapToDouble(Option::costPerYear).min();
            if (without.isPresent() && without.getAsDouble() < best.costPerYear() && !unmet(duty).contains(limit)) {
                prices.add(new PricedLimit(limit, true, best.costPerYear() - without.getAsDouble()));
            }
        }
        if (!best.lasts(duty)) {
            least(options.stream().filter(keeps(duty, null)).filter(option -> option.lasts(duty))).ifPresent(lasting ->
                    prices.add(new PricedLimit(Limit.INTERVAL, false, lasting.costPerYear() - best.costPerYear())));
        }
        return prices;
    }

    /** What keeps a cheaper dose out, or that none is cheaper; none where the firm limits leave no dose. */
    public Optional<Bound> bound(DesignConditions duty) {
        if (!keeps(duty, null).test(best)) {
            return Optional.empty();
        }
        List<PricedLimit> prices = prices(duty);
        if (prices.stream().anyMatch(price -> price.limit() == Limit.LEAKAGE)) {
            return Optional.of(Bound.LEAKAGE);
        }
        if (prices.stream().anyMatch(price -> price.limit() == Limit.SALT_EFFICIENCY)) {
            return Optional.of(Bound.EFFICIENCY);
        }
        int index = options.indexOf(best);
        if (index > 0 && !options.get(index - 1).serves()) {
            return Optional.of(Bound.SERVICE_STANDARD);
        }
        return Optional.of(index == 0 ? Bound.LOWEST_RECOMMENDED
                : index == options.size() - 1 ? Bound.HIGHEST_RECOMMENDED : Bound.COST);
    }

    /** Every other option, which are whole pounds per cubic foot where salt is set by them, and the best. */
    public List<Option> shown() {
        return options.stream().filter(option -> option == best || options.indexOf(option) % 2 == 0).toList();
    }

    /** Lowest dose of sodium chloride that is recommended for {@code water}, pounds per cubic foot. */
    static double lowestPoundsPerCubicFoot(WaterAnalysis water) {
        return WaterCautions.lowestDosesWillNotHold(water)
                ? ASSUMED_LOWEST_POUNDS_ON_DIFFICULT_WATER : LOWEST_POUNDS_PER_CUBIC_FOOT;
    }

    /** A dose of sodium chloride as one of the softener's salt, g/L. */
    static double grams(Softener softener, double poundsPerCubicFoot) {
        return softener.salt().fromSodiumChloride(SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(poundsPerCubicFoot));
    }
}
