package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.regeneration.Outcome;
import dev.brinebook.regeneration.Simulation;
import dev.brinebook.regeneration.Trial;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import dev.brinebook.wording.Worded;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * The salt dose that is cheapest to run for a duty, metered, found by trying every half pound per cubic foot on the same
 * days.
 *
 * <p>A low dose removes more hardness per salt, but regenerates more often, and each time the reserve is thrown away and
 * the rinse water is used: the cheapest lies where the two balance.
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
    /** Costs that part by less come from the order of the days, not from the dose; the lower dose then wastes less salt. */
    public static final double ASSUMED_EQUAL_COST_SHARE = 0.02;
    static final double STEP_POUNDS_PER_CUBIC_FOOT = 0.5;

    public DoseChoice {
        options = List.copyOf(options);
    }

    /**
     * One dose tried.
     *
     * @param dosed the softener at the dose
     * @param settings the meter settings that go with it
     * @param outcome what happened on the days
     * @param costPerYear salt and regeneration water of a year
     * @param intervalDays days of mean use that the capacity lasts; infinite when nothing is used
     */
    public record Option(DosedSoftener dosed, MeterSettings settings, Outcome outcome, double costPerYear,
            double intervalDays) {

        /** Whether the water keeps below the end point of hardness. */
        public boolean holdsEndPoint() {
            return dosed.softener().holdsEndPoint(dosed.saltDoseGramsPerLitre());
        }

        boolean isEfficient(Duty duty) {
            return dosed.saltEfficiencyGramsPerGram() >= duty.minimumSaltEfficiencyGramsPerGram();
        }

        boolean lasts(Duty duty) {
            return outcome.meanIntervalDays().asOptional().orElse(Double.POSITIVE_INFINITY) >= duty.minimumIntervalDays();
        }

        boolean coversADay() {
            return settings.reserveLitres() <= settings.meterLitres();
        }
    }

    /** What a dose should keep to, said as what it means not to. */
    public enum Limit implements Worded {
        LEAKAGE("more hardness leaks through than the end point allows"),
        INTERVAL("the capacity does not last the fewest days between regenerations"),
        SALT_EFFICIENCY("less hardness is removed for the salt than is asked for");

        private final String words;

        Limit(String words) {
            this.words = words;
        }

        @Override
        public String words() {
            return words;
        }
    }

    /**
     * The cheapest dose that holds the end point of hardness, has the salt efficiency that the duty asks for, and at which
     * the fewest days that it asks for lie between two regenerations on the mean; or the lowest of the doses that cost the
     * same within {@link #ASSUMED_EQUAL_COST_SHARE}. When none has the efficiency, that limit is dropped; when none lasts so
     * long, the cheapest that covers a day of high use; when none does that either, or none holds the end point, the
     * highest; and the highest that the tables cover when the column settles to no cycle at any other.
     * {@link #unmet} tells what was dropped.
     */
    public static DoseChoice cheapest(Softener softener, Duty duty, RunningCost cost) {
        double lowest = lowestPoundsPerCubicFoot(duty.water());
        List<Option> options = new ArrayList<>();
        for (int i = 0; i <= stepsFrom(lowest); i++) {
            double dose = softener.salt().fromSodiumChloride(
                    SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(lowest + i * STEP_POUNDS_PER_CUBIC_FOOT));
            if (softener.capacity().isKnownAt(softener.salt(), dose)) {
                options.add(option(softener, dose, duty, cost));
            }
        }
        if (options.isEmpty()) {
            options.add(option(softener, CapacityTable.maxSaltDoseGramsPerLitre(softener.salt()), duty, cost));
        }
        List<Option> held = options.stream().filter(Option::holdsEndPoint).toList();
        List<Option> efficient = orAll(held, option -> option.isEfficient(duty));
        List<Option> lasting = efficient.stream().filter(option -> option.lasts(duty)).toList();
        List<Option> covering = efficient.stream().filter(Option::coversADay).toList();
        List<Option> choice = !lasting.isEmpty() ? lasting
                : !covering.isEmpty() ? covering : List.of(options.get(options.size() - 1));
        double least = choice.stream().mapToDouble(Option::costPerYear).min().orElseThrow();
        Option best = choice.stream().filter(option -> option.costPerYear() <= least * (1 + ASSUMED_EQUAL_COST_SHARE))
                .findFirst().orElseThrow();
        return new DoseChoice(best, options);
    }

    /** Limits of the duty that the dose chosen does not keep to, because none that keeps to the others does. */
    public List<Limit> unmet(Duty duty) {
        List<Limit> unmet = new ArrayList<>();
        if (!best.holdsEndPoint()) {
            unmet.add(Limit.LEAKAGE);
        }
        if (!best.lasts(duty)) {
            unmet.add(Limit.INTERVAL);
        }
        if (!best.isEfficient(duty)) {
            unmet.add(Limit.SALT_EFFICIENCY);
        }
        return unmet;
    }

    /** The options at every other step, which are whole pounds per cubic foot, and the best. */
    public List<Option> shown() {
        return options.stream().filter(option -> option == best || options.indexOf(option) % 2 == 0).toList();
    }

    private static List<Option> orAll(List<Option> options, Predicate<Option> limit) {
        List<Option> within = options.stream().filter(limit).toList();
        return within.isEmpty() ? options : within;
    }

    /** Lowest dose of sodium chloride that is recommended for {@code water}, pounds per cubic foot. */
    static double lowestPoundsPerCubicFoot(WaterAnalysis water) {
        return WaterCautions.lowestDosesWillNotHold(water)
                ? ASSUMED_LOWEST_POUNDS_ON_DIFFICULT_WATER : LOWEST_POUNDS_PER_CUBIC_FOOT;
    }

    /** Steps from {@code lowestPoundsPerCubicFoot} to the highest dose that is recommended. */
    static int stepsFrom(double lowestPoundsPerCubicFoot) {
        return (int) Math.round((HIGHEST_POUNDS_PER_CUBIC_FOOT - lowestPoundsPerCubicFoot) / STEP_POUNDS_PER_CUBIC_FOOT);
    }

    /** One dose, metered, on the days of the duty. */
    public static Option option(Softener softener, double saltDoseGramsPerLitre, Duty duty, RunningCost cost) {
        DosedSoftener dosed = DosedSoftener.designed(softener, saltDoseGramsPerLitre, duty.water().temperatureCelsius());
        MeterSettings settings = MeterSettings.of(dosed, duty);
        Outcome outcome = Simulation.simulate(new Trial(duty.days(), duty.hardness().totalMgPerL(), dosed.regeneration()),
                settings.policy());
        double load = duty.dailyLoadGrams();
        double interval = load > 0 ? dosed.capacityGrams() / load : Double.POSITIVE_INFINITY;
        return new Option(dosed, settings, outcome, Guard.notNegative(cost.ofYear(outcome.yearly()), "costPerYear"),
                interval);
    }
}
