// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.CancellationToken;
import dev.brinebook.household.DailyUse;
import dev.brinebook.household.HourlyProfile;
import dev.brinebook.household.MeteredDays;
import java.time.DayOfWeek;
import java.util.OptionalInt;

/**
 * Runs a policy through the days of a trial.
 *
 * <p>Two states run side by side: the bed holds grams, the controller counts litres and nights. They agree only when
 * the settings are right. Each day draws its use; in the night after it the controller decides, and a regeneration then
 * runs on the date that follows, at an hour without use. Over n days there are n nights.
 *
 * <p>Within a day use follows the hours of {@link HourlyProfile}: what passes while a regeneration runs by day is what
 * those hours draw, and one that starts late runs on into the next day. At night nothing is taken to pass: [DAIAD] puts
 * 1.5 % of a day's use in the hours when delayed regenerations run.
 *
 * <p>Of twin beds only the one in service is followed; the other is treated as full from the moment its regeneration starts, and
 * takes over when that is done.
 */
public final class Simulation {

    private static final DayOfWeek[] WEEKDAYS = DayOfWeek.values();

    private final Regeneration regeneration;
    private final Policy policy;
    private final double gramsPerLitre;
    private final double capacityGrams;
    /** Less than this is rounding: neither a hard day nor capacity thrown away. */
    private final double roundingGrams;
    private final boolean twin;
    /** What the policy says of itself, asked once: days are run through by the million. */
    private final boolean atOnce;
    private final double meterLitres;
    private final int overrideDays;
    private final WeekdayHistory history;
    private final EventLog log;

    private double leftGrams;
    private double litresSinceLast;
    private int nightsSinceLast;
    /** What is still to run of a regeneration started by day, as a share of a day. */
    private double runningShare;

    private int regenerations;
    private int overrides;
    private double throughBedLitres;
    private double bypassedLitres;
    private int hardDays;
    private int firstHardDay = -1;
    private double hardLitres;
    private double removedGrams;
    private double regeneratedGrams;
    private double unusedGrams;
    /** Most litres from one regeneration to the next, over all days so far. */
    private double mostLitres;

    private Simulation(double hardnessMilligramsPerLitre, Regeneration regeneration, double leftAtStartShare, Policy policy,
            EventLog log) {
        this.regeneration = regeneration;
        this.policy = policy;
        this.log = log;
        gramsPerLitre = hardnessMilligramsPerLitre / 1000;
        capacityGrams = regeneration.capacityGrams();
        roundingGrams = Policy.ROUNDING_SHARE * capacityGrams;
        twin = policy.softensMeanwhile();
        atOnce = policy.startsAtOnce();
        meterLitres = policy.meterVolumeLitres();
        overrideDays = policy.overrideDays();
        history = policy.followsWeekdays() ? new WeekdayHistory() : null;
        leftGrams = leftAtStartShare * capacityGrams;
        litresSinceLast = (1 - leftAtStartShare) * policy.meterVolumeLitres();
    }

    /** What {@code policy} does in {@code trial}. */
    public static SimulationResult simulate(SimulationInput trial, Policy policy) {
        EventLog log = new EventLog();
        Simulation run = new Simulation(trial.hardnessMilligramsPerLitre(), trial.regeneration(), trial.leftAtStartShare(),
                policy, log);
        Totals totals = run.through(trial.days());
        return new SimulationResult(trial, policy, log.on(trial.days()), totals,
                run.firstHardDay < 0 ? OptionalInt.empty() : OptionalInt.of(run.firstHardDay),
                new FinalState(run.leftGrams, run.litresSinceLast, run.nightsSinceLast));
    }

    /** What a policy uses and delivers on days, starting just regenerated; no more is noted of it. */
    public static Totals totals(DailyUse days, double hardnessMilligramsPerLitre, Regeneration regeneration, Policy policy) {
        return counting(hardnessMilligramsPerLitre, regeneration, policy).through(days);
    }

    /** A run over many years that starts just regenerated and keeps totals only. */
    static Simulation counting(double hardnessMilligramsPerLitre, Regeneration regeneration, Policy policy) {
        return new Simulation(hardnessMilligramsPerLitre, regeneration, 1, policy, null);
    }

    /** A run that starts with this count of litres and nights since the last regeneration, and keeps count only. */
    static Simulation startingWith(double litres, int nights, double hardnessMilligramsPerLitre, Regeneration regeneration,
            Policy policy) {
        Simulation run = counting(hardnessMilligramsPerLitre, regeneration, policy);
        run.leftGrams = Math.max(0, run.capacityGrams - litres * run.gramsPerLitre);
        run.litresSinceLast = litres;
        run.nightsSinceLast = nights;
        return run;
    }

    /** Continues through more days and returns the totals of these alone. */
    Totals through(DailyUse days) {
        CancellationToken.obey();
        startCounting();
        int firstWeekday = days.firstDate().getDayOfWeek().ordinal();
        int size = days.size();
        for (int day = quietUntil(days, 0); day < size; day = quietUntil(days, day + 1)) {
            double useLitres = days.useLitres(day);
            deliver(day, useLitres);
            if (history != null) {
                history.add(WEEKDAYS[(firstWeekday + day) % 7], useLitres);
            }
            decide(day + 1, WEEKDAYS[(firstWeekday + day + 1) % 7]);
        }
        return counted();
    }

    /**
     * Runs through the days from one on that end as they begin under a meter that starts at once: it does not start, no override is due
     * and the bed softens all. Most days are such.
     *
     * @return the first other day, or their number
     */
    private int quietUntil(DailyUse days, int from) {
        if (!atOnce || runningShare > 0 && !twin) {
            return from;
        }
        double through = throughBedLitres;
        double since = litresSinceLast;
        double removed = removedGrams;
        double left = leftGrams;
        int size = days.size();
        int day = from;
        while (day < size && !Policy.overrides(overrideDays, nightsSinceLast + 1 + day - from)) {
            double litres = days.useLitres(day);
            double loadGrams = litres * gramsPerLitre;
            if (litres > 0 && Policy.runsOut(meterLitres, litres, since) || loadGrams - left > roundingGrams) {
                break;
            }
            double taken = Math.min(loadGrams, left);
            through += litres;
            since += litres;
            removed += taken;
            left -= taken;
            day++;
        }
        throughBedLitres = through;
        litresSinceLast = since;
        removedGrams = removed;
        leftGrams = left;
        nightsSinceLast += day - from;
        runningShare = Math.max(0, runningShare - (day - from));
        return day;
    }

    /**
     * The same of days that were metered: missing ones are left out with their nights, but a clock whose weekday falls among
     * them has regenerated when they are over.
     */
    Totals through(MeteredDays days) {
        CancellationToken.obey();
        startCounting();
        int[] known = days.known();
        for (int i = 0; i < known.length; i++) {
            deliver(known[i], days.litres(known[i]));
            if (history != null) {
                history.add(days.dateOf(known[i]).getDayOfWeek(), days.litres(known[i]));
            }
            int next = i + 1 < known.length ? known[i + 1] : known[i] + 1;
            decide(next, morrow(days, known[i], next));
        }
        return counted();
    }

    /** The weekday that a clock or a reserve looks to in the night after a day: that of the next one known, or of the clock. */
    private DayOfWeek morrow(MeteredDays days, int day, int next) {
        for (int missing = day + 1; missing < next; missing++) {
            DayOfWeek weekday = days.dateOf(missing).getDayOfWeek();
            if (policy.weekdays().contains(weekday)) {
                return weekday;
            }
        }
        return days.dateOf(next).getDayOfWeek();
    }

    private Totals counted() {
        return new Totals(regenerations, overrides, regenerations * regeneration.saltGrams(),
                regenerations * regeneration.waterLitres(), throughBedLitres, bypassedLitres, hardDays, hardLitres,
                removedGrams, regeneratedGrams, unusedGrams);
    }

    /** Most litres that were drawn from one regeneration to the next, on all days run through. */
    double mostLitres() {
        return Math.max(mostLitres, litresSinceLast);
    }

    private void startCounting() {
        regenerations = 0;
        overrides = 0;
        throughBedLitres = 0;
        bypassedLitres = 0;
        hardDays = 0;
        hardLitres = 0;
        removedGrams = 0;
        regeneratedGrams = 0;
        unusedGrams = 0;
    }

    private void deliver(int day, double useLitres) {
        double hardBefore = hardLitres;
        if (atOnce) {
            deliverByDay(day, useLitres);
        } else {
            draw(useLitres);
        }
        if (hardLitres > hardBefore) {
            hardDays++;
            firstHardDay = firstHardDay < 0 ? day : firstHardDay;
        }
    }

    /**
     * A day on which the meter may start at any hour, more than once. Times are shares of the day; by {@link HourlyProfile}
     * each has its share of the day's use.
     */
    private void deliverByDay(int day, double useLitres) {
        double now = 0;
        double drawn = 0;
        while (now < 1) {
            if (runningShare > 0 && !twin) {
                double until = Math.min(1, now + runningShare);
                double share = HourlyProfile.shareUntil(until);
                bypassedLitres += useLitres * (share - drawn);
                runningShare = now + runningShare - until;
                now = until;
                drawn = share;
                continue;
            }
            double restLitres = useLitres * (1 - drawn);
            if (!(restLitres > 0 && Policy.runsOut(meterLitres, restLitres, litresSinceLast))) {
                draw(restLitres);
                runningShare = Math.max(0, runningShare - (1 - now));
                return;
            }
            double untilOut = Math.min(restLitres, Math.max(0, meterLitres - litresSinceLast));
            draw(untilOut);
            drawn = Math.min(1, drawn + untilOut / useLitres);
            double out = Math.max(now, HourlyProfile.dayShareAt(drawn));
            runningShare = Math.max(0, runningShare - (out - now));
            now = out;
            if (runningShare > 0) {
                // The other bed is not ready: until it is, the water passes the one that is exhausted.
                double until = Math.min(1, now + runningShare);
                double share = HourlyProfile.shareUntil(until);
                draw(useLitres * (share - drawn));
                runningShare = now + runningShare - until;
                now = until;
                drawn = share;
                if (runningShare > 0) {
                    return;
                }
            }
            regenerate(day, Reason.METER);
            runningShare = regeneration.minutes() / Regeneration.MINUTES_PER_DAY;
        }
    }

    private void draw(double litres) {
        double loadGrams = litres * gramsPerLitre;
        double missingGrams = loadGrams - leftGrams;
        throughBedLitres += litres;
        litresSinceLast += litres;
        if (missingGrams > roundingGrams) {
            hardLitres += missingGrams / gramsPerLitre;
        }
        double taken = Math.min(loadGrams, leftGrams);
        removedGrams += taken;
        leftGrams -= taken;
    }

    private void decide(int dateIndex, DayOfWeek morrow) {
        nightsSinceLast++;
        if (!atOnce && policy.callsTonight(litresSinceLast, nightsSinceLast, morrow, history)) {
            regenerate(dateIndex, policy.reason());
        } else if (Policy.overrides(overrideDays, nightsSinceLast)) {
            regenerate(dateIndex, Reason.OVERRIDE);
            overrides++;
        }
    }

    private void regenerate(int dateIndex, Reason reason) {
        double unused = leftGrams > roundingGrams ? leftGrams : 0;
        if (log != null) {
            log.add(dateIndex, reason, unused);
        }
        regenerations++;
        mostLitres = Math.max(mostLitres, litresSinceLast);
        unusedGrams += unused;
        regeneratedGrams += capacityGrams - leftGrams;
        leftGrams = capacityGrams;
        litresSinceLast = 0;
        nightsSinceLast = 0;
    }
}
