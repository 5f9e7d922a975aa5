package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.regeneration.Outcome;
import dev.brinebook.regeneration.Simulation;
import dev.brinebook.regeneration.Trial;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import java.util.ArrayList;
import java.util.List;

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
    private static final double STEP_POUNDS_PER_CUBIC_FOOT = 0.5;

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
    }

    /**
     * The cheapest dose at which the fewest days that the duty asks for lie between two regenerations on the mean, or the
     * lowest of the doses that cost the same within {@link #ASSUMED_EQUAL_COST_SHARE}. When no dose lasts so long, the
     * cheapest that covers a day of high use; when none does that either, the highest.
     */
    public static DoseChoice cheapest(Softener softener, Duty duty, RunningCost cost) {
        double lowest = lowestPoundsPerCubicFoot(duty.water());
        List<Option> options = new ArrayList<>();
        int steps = (int) Math.round((HIGHEST_POUNDS_PER_CUBIC_FOOT - lowest) / STEP_POUNDS_PER_CUBIC_FOOT);
        for (int i = 0; i <= steps; i++) {
            double pounds = lowest + i * STEP_POUNDS_PER_CUBIC_FOOT;
            options.add(option(softener, softener.salt().fromSodiumChloride(
                    SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(pounds)), duty, cost));
        }
        List<Option> lasting = options.stream().filter(option -> lasts(option, duty.minimumIntervalDays())).toList();
        List<Option> covering = options.stream().filter(DoseChoice::coversADay).toList();
        List<Option> choice = !lasting.isEmpty() ? lasting
                : !covering.isEmpty() ? covering : List.of(options.get(options.size() - 1));
        double least = choice.stream().mapToDouble(Option::costPerYear).min().orElseThrow();
        Option best = choice.stream().filter(option -> option.costPerYear() <= least * (1 + ASSUMED_EQUAL_COST_SHARE))
                .findFirst().orElseThrow();
        return new DoseChoice(best, List.copyOf(options));
    }

    /** Lowest dose of sodium chloride that is recommended for {@code water}, pounds per cubic foot. */
    static double lowestPoundsPerCubicFoot(WaterAnalysis water) {
        return WaterCautions.lowestDosesWillNotHold(water)
                ? ASSUMED_LOWEST_POUNDS_ON_DIFFICULT_WATER : LOWEST_POUNDS_PER_CUBIC_FOOT;
    }

    private static boolean lasts(Option option, double minimumIntervalDays) {
        return option.outcome().meanIntervalDays().asOptional().orElse(Double.POSITIVE_INFINITY) >= minimumIntervalDays;
    }

    private static boolean coversADay(Option option) {
        return option.settings().reserveLitres() <= option.settings().meterLitres();
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
