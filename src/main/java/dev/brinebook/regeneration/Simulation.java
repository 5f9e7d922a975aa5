package dev.brinebook.regeneration;

import dev.brinebook.household.Days;
import java.time.DayOfWeek;
import java.util.OptionalInt;

/**
 * Runs a policy through the days of a trial.
 *
 * <p>Two states run side by side: the bed holds grams, the controller counts litres and nights. They agree only when
 * the settings are right. Each day draws its use; in the night after it the controller decides, and a regeneration then
 * runs on the date that follows, at an hour when nothing is drawn. Over n days there are n nights.
 *
 * <p>Simplification: within a day use is spread evenly, so a regeneration by day of m minutes lets m/1440 of the day's
 * use pass hard; one that starts late runs on into the next day. Real use has peaks, but [DAIAD] puts only 1.5 % of it
 * in the hours of the night when delayed regenerations run.
 */
public final class Simulation {

    private static final DayOfWeek[] WEEKDAYS = DayOfWeek.values();

    private final Trial trial;
    private final Policy policy;
    private final double gramsPerLitre;
    private final double capacityGrams;
    /** Less than this is rounding: neither a hard day nor capacity thrown away. */
    private final double roundingGrams;
    private final EventLog log = new EventLog();

    private double leftGrams;
    private double litresSinceLast;
    private int nightsSinceLast;
    /** What is still to run of a regeneration started by day, as a share of a day. */
    private double runningShare;

    private int overrides;
    private double throughBedLitres;
    private double bypassedLitres;
    private int hardDays;
    private int firstHardDay = -1;
    private double hardLitres;
    private double removedGrams;
    private double regeneratedGrams;
    private double unusedGrams;

    private Simulation(Trial trial, Policy policy) {
        this.trial = trial;
        this.policy = policy;
        gramsPerLitre = trial.hardnessMilligramsPerLitre() / 1000;
        capacityGrams = trial.regeneration().capacityGrams();
        roundingGrams = Policy.ROUNDING_SHARE * capacityGrams;
        leftGrams = trial.startGrams();
        litresSinceLast = (1 - trial.leftAtStartShare()) * policy.meterVolumeLitres();
    }

    /** What {@code policy} does in {@code trial}. */
    public static Outcome simulate(Trial trial, Policy policy) {
        Simulation run = new Simulation(trial, policy);
        Days days = trial.days();
        int firstWeekday = days.firstDate().getDayOfWeek().ordinal();
        for (int day = 0; day < days.size(); day++) {
            run.deliver(day, days.useLitres(day));
            run.decide(day + 1, WEEKDAYS[(firstWeekday + day + 1) % 7]);
        }
        return run.outcome();
    }

    private void deliver(int day, double useLitres) {
        double hardBefore = hardLitres;
        if (policy instanceof MeteredImmediate meter) {
            deliverWithBypass(day, useLitres, meter);
        } else {
            draw(useLitres);
        }
        if (hardLitres > hardBefore) {
            hardDays++;
            firstHardDay = firstHardDay < 0 ? day : firstHardDay;
        }
    }

    /** A day on which the meter may stop the flow through the bed, more than once. */
    private void deliverWithBypass(int day, double useLitres, MeteredImmediate meter) {
        double goneShare = 0;
        while (goneShare < 1) {
            double bypassShare = Math.min(runningShare, 1 - goneShare);
            bypassedLitres += useLitres * bypassShare;
            runningShare -= bypassShare;
            goneShare += bypassShare;
            double restLitres = useLitres * (1 - goneShare);
            if (!(restLitres > 0 && meter.startsWithin(restLitres, litresSinceLast))) {
                draw(restLitres);
                return;
            }
            double untilStart = Math.min(restLitres, Math.max(0, meter.litresLeft(litresSinceLast)));
            draw(untilStart);
            goneShare += untilStart / useLitres;
            regenerate(day, Reason.METER);
            runningShare = trial.regeneration().minutes() / Regeneration.MINUTES_PER_DAY;
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
        if (policy.callsTonight(litresSinceLast, nightsSinceLast, morrow)) {
            regenerate(dateIndex, policy.reason());
        } else if (policy.overridesTonight(nightsSinceLast)) {
            regenerate(dateIndex, Reason.OVERRIDE);
            overrides++;
        }
    }

    private void regenerate(int dateIndex, Reason reason) {
        double unused = leftGrams > roundingGrams ? leftGrams : 0;
        log.add(dateIndex, reason, unused);
        unusedGrams += unused;
        regeneratedGrams += capacityGrams - leftGrams;
        leftGrams = capacityGrams;
        litresSinceLast = 0;
        nightsSinceLast = 0;
    }

    private Outcome outcome() {
        int regenerations = log.size();
        Totals totals = new Totals(regenerations, overrides, regenerations * trial.regeneration().saltGrams(),
                regenerations * trial.regeneration().waterLitres(), throughBedLitres, bypassedLitres, hardDays,
                hardLitres, removedGrams, regeneratedGrams, unusedGrams);
        return new Outcome(trial, policy, log.on(trial.days()), totals,
                firstHardDay < 0 ? OptionalInt.empty() : OptionalInt.of(firstHardDay),
                new EndState(leftGrams, litresSinceLast, nightsSinceLast));
    }
}
