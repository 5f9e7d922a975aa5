// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;

/** Looks at the interval of a clock. */
final class ClockReview {

    private ClockReview() {
    }

    /** Whether another interval is to be set; weekdays that the target has too stay. */
    static boolean changes(ExistingSoftener found, SetRight target) {
        OptionalInt days = target.setup().policy().everyDays();
        return days.isPresent() && setDays(found.policy(), days.getAsInt()) != days.getAsInt();
    }

    /**
     * The interval of the target. Where the dose was not read the interval that belongs to it is not known either, but that iron
     * or the rule of the country asks for a short one.
     *
     * @param served whether the existing clock setting meets the service standard
     */
    static List<Change> changes(ExistingSoftener found, SetRight target, DesignConditions duty, boolean served) {
        if (!changes(found, target)) {
            return List.of();
        }
        int days = target.setup().policy().everyDays().orElseThrow();
        double set = setDays(found.policy(), days);
        Optional<Finding.Code> limit = tooLong(set, duty);
        if (!found.knows(Setting.INTERVAL) || !found.knows(Setting.SALT_DOSE) && limit.isEmpty()) {
            return List.of();
        }
        Finding.Code code = set < days ? Finding.Code.CLOCK_INTERVAL_SHORTER_THAN_NEEDED
                : served ? Finding.Code.CLOCK_INTERVAL_FOLLOWS_DOSE : Finding.Code.CLOCK_INTERVAL_TOO_LONG;
        UnaryOperator<SoftenerSettings> apply = setup -> setup.with(new ClockEveryDays(days));
        Change change = new Change(served ? limit.orElse(code) : code, Setting.INTERVAL, set, days, apply);
        return limit.isPresent() && !served ? List.of(change, change.also(limit.get())) : List.of(change);
    }

    /** Why so many days between two regenerations are too many, whatever was used: iron, or the rule of the country. */
    static Optional<Finding.Code> tooLong(double days, DesignConditions duty) {
        return days <= MeterSettings.overrideDays(duty) ? Optional.empty()
                : duty.iron() ? Optional.of(Finding.Code.OVERRIDE_TOO_LONG_FOR_IRON)
                : duty.practice().isByCountry() ? Optional.of(Finding.Code.OVERRIDE_TOO_LONG_FOR_HYGIENE) : Optional.empty();
    }

    /** The longest interval, up to the usual day override, with which a clock keeps to the service standard; 0 for none. */
    static int daysThatServe(Regeneration regeneration, DesignConditions duty) {
        return daysThatServe(0, regeneration, duty);
    }

    /** The same where an interval is known to serve. */
    static int daysThatServe(int known, Regeneration regeneration, DesignConditions duty) {
        int days = known;
        int most = MeterSettings.overrideDays(duty);
        while (days < most && duty.isServed(new ClockEveryDays(days + 1), regeneration)) {
            days++;
        }
        return days;
    }

    /** Days between regenerations: the longest, where they are too long; of weekdays that are not, the mean. */
    private static double setDays(Policy clock, int days) {
        int longest = longestGapDays(clock);
        return longest > days ? longest : Math.min(longest, clock.meanClockNights());
    }

    /** Longest time between two regenerations of a clock, its override included. */
    static int longestGapDays(Policy clock) {
        int gap = Arrays.stream(DayOfWeek.values()).mapToInt(clock::clockNightsAfter).max().orElseThrow();
        return clock.overrideDays() == Policy.NO_OVERRIDE ? gap : Math.min(gap, clock.overrideDays());
    }
}
