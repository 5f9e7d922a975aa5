package dev.brinebook.softener;

import dev.brinebook.household.Days;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.ClockOnWeekdays;
import dev.brinebook.regeneration.Policy;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Looks at the interval of a clock. */
final class ClockReview {

    private ClockReview() {
    }

    /** The last bit of a dose that was looked up for a capacity. */
    private static final double SAME_SHARE = 1e-9;

    static List<Finding> of(Found found, Duty duty, double capacityGrams) {
        int days = longestGapDays(found.policy());
        int lasting = daysThatLast(capacityGrams * (1 + SAME_SHARE), duty);
        int longest = Math.min(lasting, MeterSettings.overrideDays(duty));
        List<Finding> findings = new ArrayList<>();
        if (days > lasting) {
            findings.add(finding(Finding.Code.CLOCK_INTERVAL_TOO_LONG, found, days, longest, duty));
        } else if (days < longest) {
            findings.add(finding(Finding.Code.CLOCK_INTERVAL_SHORTER_THAN_NEEDED, found, days, longest, duty));
        }
        if (duty.iron() && days > MeterSettings.OVERRIDE_DAYS_WITH_IRON) {
            findings.add(finding(Finding.Code.OVERRIDE_TOO_LONG_FOR_IRON, found, days, longest, duty));
        }
        return findings;
    }

    private static Finding finding(Finding.Code code, Found found, int days, int better, Duty duty) {
        return new Finding(code, days, better, Review.difference(found, found.setup().with(new ClockEveryDays(better)),
                duty));
    }

    /** Hardness of the {@code days} successive days of highest use, grams as CaCO3. */
    static double worstLoadGrams(Duty duty, int days) {
        Days year = duty.days();
        int span = Math.min(days, year.size());
        double sum = 0;
        double worst = 0;
        for (int i = 0; i < year.size(); i++) {
            sum += year.useLitres(i) - (i >= span ? year.useLitres(i - span) : 0);
            worst = Math.max(worst, sum);
        }
        return worst * duty.hardness().totalMgPerL() / 1000;
    }

    /** The most days that a capacity lasts, whichever days of the year they are; at least 1. */
    static int daysThatLast(double capacityGrams, Duty duty) {
        int days = 1;
        while (days < Policy.MAX_INTERVAL_DAYS && worstLoadGrams(duty, days + 1) <= capacityGrams) {
            days++;
        }
        return days;
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
