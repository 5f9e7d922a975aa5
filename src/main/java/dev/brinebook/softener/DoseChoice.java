// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.resin.CapacityTable;
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
 * The salt dose and the reserve that together cost least to run, metered, in the long run, while the service standard is kept.
 *
 * <p>Every half pound per cubic foot, or about that in the steps of the controller, is tried with the smallest reserve
 * that meets the standard. A low dose removes more
 * hardness per salt, but regenerates more often, and each time the reserve is thrown away and the rinse water is used: the
 * cheapest lies where the two balance.
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
    /** Start of the search for a reserve. */
    private static final double LIKELY_RESERVE_DAYS = 2.2;

    public DoseChoice {
        options = List.copyOf(options);
    }

    /**
     * One dose, with the reserve that goes with it.
     *
     * @param dosed the softener at the dose
     * @param settings the meter settings that go with it
     * @param year expected totals of a year
     * @param costPerYear salt and regeneration water of that year
     */
    public record Option(DosedSoftener dosed, MeterSettings settings, YearlyTotals year, double costPerYear) {

        /** Whether the water keeps below the end point of hardness. */
        public boolean holdsEndPoint() {
            return dosed.softener().holdsEndPoint(dosed.saltDoseGramsPerLitre());
        }

        /** Mean days between two regenerations; none where it never regenerates. */
        public OptionalResult intervalDays() {
            return year.intervalDays();
        }

        boolean isEfficient(DesignConditions duty) {
            return dosed.saltEfficiencyGramsPerGram() >= duty.minimumSaltEfficiencyGramsPerGram();
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

    /**
     * The dose and reserve of least expected cost that hold the end point of hardness, keep to the service standard and have
     * the salt efficiency that the duty asks for. When none has the efficiency, that limit is dropped; when none keeps to the
     * standard, the dose with fewest hard days, regenerated every night; when none holds the end point, the highest; and the
     * highest that the tables cover when the column settles to no cycle at any other. {@link #unmet} says what was dropped.
     *
     * <p>The fewest days between regenerations that the duty aims at do not decide: a dose just short of them would give way
     * to one that costs much more. {@link #prices} says what keeping to them would cost.
     */
    public static DoseChoice cheapest(Softener softener, DesignConditions duty, RunningCost cost) {
        return cheapest(softener, duty, cost, MeterStart.DELAYED);
    }

    /** The same for a meter of either kind. */
    public static DoseChoice cheapest(Softener softener, DesignConditions duty, RunningCost cost, MeterStart start) {
        return cheapest(softener, duty, cost, start, null);
    }

    /**
     * The same, found sooner where another choice is known for much the same duty.
     *
     * @param similar choice for the same softener whose reserves are looked at first; null for none
     */
    public static DoseChoice cheapest(Softener softener, DesignConditions duty, RunningCost cost, MeterStart start, DoseChoice similar) {
        List<Option> options = new ArrayList<>();
        double likely = LIKELY_RESERVE_DAYS * duty.meanLitres();
        for (double dose : duty.dosesGramsPerLitre(softener)) {
            if (softener.capacity().isKnownAt(softener.salt(), dose)) {
                int place = options.size();
                // Half a step below what it was, so that the same step is tried first.
                double first = similar == null || place >= similar.options().size() ? likely
                        : similar.options().get(place).settings().reserveLitres() - duty.reserveStepLitres(0) / 2;
                options.add(option(softener, dose, duty, cost, start, first));
                likely = options.get(place).settings().reserveLitres();
            }
        }
        if (options.isEmpty()) {
            options.add(option(softener, CapacityTable.maxSaltDoseGramsPerLitre(softener.salt()), duty, cost, start, 0));
        }
        return new DoseChoice(best(options, duty), options);
    }

    /**
     * The least costly option of a meter that starts at once, found sooner: doses in the order of what they cost by the mean use,
     * until one keeps to all limits; the highest where none does.
     */
    public static Option atOnce(Softener softener, DesignConditions duty, RunningCost cost, MeterStart start) {
        List<DosedSoftener> doses = new ArrayList<>();
        for (double dose : duty.dosesGramsPerLitre(softener)) {
            if (softener.capacity().isKnownAt(softener.salt(), dose) && softener.holdsEndPoint(dose)) {
                doses.add(DosedSoftener.designed(softener, dose, duty.water().temperatureCelsius()));
            }
        }
        Option last = null;
        for (DosedSoftener dosed : doses.stream().sorted(Comparator.comparingDouble(one -> costPerDay(one, duty, cost))).toList()) {
            Option option = option(softener, dosed.saltDoseGramsPerLitre(), duty, cost, start, 0);
            if (option.serves() && option.isEfficient(duty)) {
                return option;
            }
            last = last == null || dosed.saltDoseGramsPerLitre() > last.dosed().saltDoseGramsPerLitre() ? option : last;
        }
        return last != null ? last : option(softener, CapacityTable.maxSaltDoseGramsPerLitre(softener.salt()), duty, cost, start, 0);
    }

    /** By the capacity over the mean use, or by the override where that comes first. */
    private static double costPerDay(DosedSoftener dosed, DesignConditions duty, RunningCost cost) {
        double days = Math.min(MeterSettings.overrideDays(duty), 1000 * dosed.capacityGrams() / duty.settingMgPerL()
                / Math.max(Double.MIN_NORMAL, duty.meanLitres()));
        return cost.ofRegeneration(dosed.saltGrams(), dosed.cycle().waterLitres()) / days;
    }

    private static Option best(List<Option> options, DesignConditions duty) {
        return least(candidates(options, duty).stream()).orElseThrow();
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
                best.settings().overrideDays()), best.dosed().regeneration()));
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

    /** One dose, metered, with the reserve that goes with it. */
    public static Option option(Softener softener, double saltDoseGramsPerLitre, DesignConditions duty, RunningCost cost) {
        return option(softener, saltDoseGramsPerLitre, duty, cost, MeterStart.DELAYED, 0);
    }

    /** The same for a meter of either kind. */
    public static Option option(Softener softener, double saltDoseGramsPerLitre, DesignConditions duty, RunningCost cost,
            MeterStart start) {
        return option(softener, saltDoseGramsPerLitre, duty, cost, start, 0);
    }

    private static Option option(Softener softener, double saltDoseGramsPerLitre, DesignConditions duty, RunningCost cost, MeterStart start,
            double likelyReserveLitres) {
        DosedSoftener dosed = DosedSoftener.designed(softener, saltDoseGramsPerLitre, duty.water().temperatureCelsius());
        MeterSettings settings = MeterSettings.of(dosed, duty, start, likelyReserveLitres);
        YearlyTotals year = duty.year(settings.policy(), dosed.regeneration());
        return new Option(dosed, settings, year, Guard.notNegative(cost.ofYear(year), "costPerYear"));
    }
}
