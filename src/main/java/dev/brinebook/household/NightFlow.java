// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The least flow of each night, from readings an hour apart or closer: a flow that never stops is a leak, or a fixture
 * that runs.
 */
public final class NightFlow {

    /** Source: [CP-NIGHT-FLOW] the hours of least use. */
    static final int FROM_HOUR = 2;
    static final int TO_HOUR = 4;
    /** Fewer nights in a row may be chance. */
    public static final int ASSUMED_NIGHTS = 7;
    private static final Duration HOUR = Duration.ofHours(1);

    private final TreeMap<LocalDate, Double> leastLitresPerHour;

    private NightFlow(TreeMap<LocalDate, Double> leastLitresPerHour) {
        this.leastLitresPerHour = leastLitresPerHour;
    }

    /**
     * Consecutive nights whose flow never stopped.
     *
     * @param firstDate the first of them
     * @param lastDate the last of them
     * @param nights how many of them were seen
     * @param goesOn whether no later night was seen
     * @param leastLitresPerHour the least flow of all of them
     */
    public record Unceasing(LocalDate firstDate, LocalDate lastDate, int nights, boolean goesOn, double leastLitresPerHour) {

        /**
         * Daily volume of a flow that never stops.
         *
         * <pre>V = 24 Q</pre>
         *
         * <p>V volume, L per day; Q least flow, L/h.
         * Validity: a flow that runs all day.
         * Source: volume of a constant flow, by definition.
         * Deviation: none.
         */
        public double litresPerDay() {
            return 24 * leastLitresPerHour;
        }
    }

    /** The nights in which metered uses of an hour or less fill at least an hour from 02:00 to 04:00. */
    static NightFlow of(List<MeteredUse> draws, ZoneId zone) {
        TreeMap<LocalDate, Double> least = new TreeMap<>();
        TreeMap<LocalDate, Duration> seen = new TreeMap<>();
        for (MeteredUse draw : draws) {
            LocalDate date = draw.from().atZone(zone).toLocalDate();
            Instant start = date.atTime(FROM_HOUR, 0).atZone(zone).toInstant();
            Instant end = date.atTime(TO_HOUR, 0).atZone(zone).toInstant();
            boolean inside = !draw.from().isBefore(start) && !draw.to().isAfter(end);
            if (inside && draw.time().compareTo(HOUR) <= 0) {
                least.merge(date, draw.litresPerHour(), Math::min);
                seen.merge(date, draw.time(), Duration::plus);
            }
        }
        least.keySet().removeIf(date -> seen.get(date).compareTo(HOUR) < 0);
        return new NightFlow(least);
    }

    /** How many nights were seen. */
    public int nights() {
        return leastLitresPerHour.size();
    }

    /** The longest run of nights, {@value #ASSUMED_NIGHTS} or more, whose flow never stopped; the last of several. */
    public Optional<Unceasing> unceasing() {
        Unceasing longest = null;
        Unceasing run = null;
        for (Map.Entry<LocalDate, Double> night : leastLitresPerHour.entrySet()) {
            run = night.getValue() > 0 ? longer(run, night.getKey(), night.getValue()) : null;
            longest = run != null && (longest == null || run.nights() >= longest.nights()) ? run : longest;
        }
        return Optional.ofNullable(longest).filter(found -> found.nights() >= ASSUMED_NIGHTS);
    }

    private Unceasing longer(Unceasing run, LocalDate date, double flow) {
        boolean goesOn = date.equals(leastLitresPerHour.lastKey());
        return run == null ? new Unceasing(date, date, 1, goesOn, flow) : new Unceasing(run.firstDate(), date,
                run.nights() + 1, goesOn, Math.min(run.leastLitresPerHour(), flow));
    }
}
