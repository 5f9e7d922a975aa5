package dev.brinebook.softener.api;

import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.household.Demand;
import dev.brinebook.regeneration.Reserve;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.softener.Duty;
import dev.brinebook.water.CompensatedHardness;
import dev.brinebook.water.WaterAnalysis;
import java.math.BigDecimal;
import java.time.LocalDate;

@About("What the practitioner prefers where there is a choice.")
public record PreferencesRequest(
        @Property(value = "First day of the year looked at. Never today, so that an equal request has an equal answer.",
                fallback = "2026-01-01", example = "\"2026-01-01\"") LocalDate startDate,
        @Property(value = "The capacities to count with: working for resin in use, newResin for resin as delivered.",
                fallback = "working", example = "\"working\"") CapacityTable capacityTable,
        @Property(value = "Probability that the reserve of a meter covers the next day.", min = Reserve.MIN_PROBABILITY,
                max = Reserve.MAX_PROBABILITY, fallback = "0.90", example = "0.90") BigDecimal reserveProbability,
        @Property(value = "Fewest days between regenerations that are aimed at.", min = 1, max = 30, unit = "days",
                fallback = "3", example = "3") BigDecimal minimumIntervalDays) {

    /** The first day of a year when the caller names none. */
    public static final LocalDate ASSUMED_START = LocalDate.of(2026, 1, 1);
    /** Source: [MMSD] at least 3 days between regenerations. */
    static final double DEFAULT_MINIMUM_INTERVAL_DAYS = 3;

    /** Largest whole number that every JSON reader keeps exactly. */
    public static final double MAX_SEED = 9_007_199_254_740_991d;

    /** Seed of the order of days, when none is given. */
    public static final long DEFAULT_SEED = 1;

    private static final PreferencesRequest NONE = new PreferencesRequest(null, null, null, null);

    /** {@code given}, or a request without preferences. */
    public static PreferencesRequest orNone(PreferencesRequest given) {
        return given == null ? NONE : given;
    }

    public LocalDate start(Explanation explanation) {
        LocalDate start = startDate == null ? ASSUMED_START : startDate;
        explanation.assume("preferences.startDate", start.toString(), startDate == null
                ? Origin.DEFAULT : Origin.CALLER);
        return start;
    }

    public CapacityTable table(Explanation explanation) {
        return explanation.orDefault("preferences.capacityTable", capacityTable, CapacityTable.WORKING);
    }

    public double reserveProbability(Explanation explanation) {
        return explanation.orDefault("preferences.reserveProbability", reserveProbability,
                ReserveRequest.ASSUMED_PROBABILITY, "");
    }

    public double minimumIntervalDays(Explanation explanation) {
        return explanation.orDefault("preferences.minimumIntervalDays", minimumIntervalDays,
                DEFAULT_MINIMUM_INTERVAL_DAYS, "days");
    }

    /**
     * What a softener is there to do, on {@code days} days from the start on, or on the days that were measured.
     *
     * @param seed sets the order of high and low days; null for the default
     */
    public Duty duty(WaterAnalysis water, CompensatedHardness hardness, Demand demand, int days, Long seed,
            Explanation explanation) {
        long used = (long) explanation.orDefault("seed", seed, DEFAULT_SEED, "");
        return new Duty(water, hardness, demand, demand.days(start(explanation), days, used),
                reserveProbability(explanation), minimumIntervalDays(explanation));
    }
}
