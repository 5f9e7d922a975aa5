package dev.brinebook.softener;

import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.ClockOnWeekdays;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** Looks at the interval of a clock. */
final class ClockReview {

    private ClockReview() {
    }

    /** A capacity needed is found to this share. */
    private static final double CAPACITY_ACCURACY = 1e-3;

    static List<Finding> of(Found found, Duty duty, double capacityGrams) {
        int days = longestGapDays(found.policy());
        Regeneration real = found.setup().regeneration(duty.water().temperatureCelsius());
        Regeneration corrected = new Regeneration(capacityGrams, real.saltGrams(), real.waterLitres(), real.minutes());
        boolean served = duty.isServed(found.policy(), corrected);
        int longest = Math.max(1, daysThatServe(corrected, duty));
        List<Finding> findings = new ArrayList<>();
        if (!served && longest < days) {
            findings.add(finding(Finding.Code.CLOCK_INTERVAL_TOO_LONG, found, days, longest, duty));
        } else if (served && days < longest) {
            findings.add(finding(Finding.Code.CLOCK_INTERVAL_SHORTER_THAN_NEEDED, found, days, longest, duty));
        }
        if (duty.iron() && days > MeterSettings.overrideDays(duty)) {
            findings.add(finding(Finding.Code.OVERRIDE_TOO_LONG_FOR_IRON, found, days, longest, duty));
        }
        return findings;
    }

    private static Finding finding(Finding.Code code, Found found, int days, int better, Duty duty) {
        return new Finding(code, days, better, Review.difference(found, found.setup().with(new ClockEveryDays(better)),
                duty));
    }

    /** The longest interval, up to the usual day override, with which a clock keeps to the service standard; 0 for none. */
    static int daysThatServe(Regeneration regeneration, Duty duty) {
        return daysThatServe(0, regeneration, duty);
    }

    /** The same where an interval is known to serve. */
    static int daysThatServe(int known, Regeneration regeneration, Duty duty) {
        int days = known;
        while (days < MeterSettings.overrideDays(duty) && duty.isServed(new ClockEveryDays(days + 1), regeneration)) {
            days++;
        }
        return days;
    }

    /**
     * The least capacity with which a clock keeps to the service standard, grams as CaCO3; none where hardly any is needed, or
     * more than {@code mostGrams}, the most that a dose restores.
     */
    static OptionalDouble capacityThatServes(Policy clock, Regeneration regeneration, double mostGrams, Duty duty) {
        double low = 0;
        double high = Math.max(1, mostGrams);
        if (!serves(clock, high, regeneration, duty)) {
            return OptionalDouble.empty();
        }
        while (high - low > CAPACITY_ACCURACY * high) {
            double middle = 0.5 * (low + high);
            if (serves(clock, middle, regeneration, duty)) {
                high = middle;
            } else {
                low = middle;
            }
            if (high < 1) {
                return OptionalDouble.empty();
            }
        }
        return OptionalDouble.of(high);
    }

    private static boolean serves(Policy clock, double capacityGrams, Regeneration regeneration, Duty duty) {
        return duty.isServed(clock, new Regeneration(capacityGrams, regeneration.saltGrams(), regeneration.waterLitres(),
                regeneration.minutes()));
    }

    /** Longest time between two regenerations of a clock, its override included. */
    static int longestGapDays(Policy clock) {
        int gap = clock instanceof ClockEveryDays every ? every.days() : gapDays(((ClockOnWeekdays) clock).weekdays());
        return clock.overrideDays() == Policy.NO_OVERRIDE ? gap : Math.min(gap, clock.overrideDays());
    }

    private static int gapDays(Set<DayOfWeek> weekdays) {
        int longest = 0;
        for (DayOfWeek day : weekdays) {
            int gap = 1;
            while (!weekdays.contains(day.plus(gap))) {
                gap++;
            }
            longest = Math.max(longest, gap);
        }
        return longest;
    }
}
