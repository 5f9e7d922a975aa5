// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.MeteredDays;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What settings would have done on days that were metered.
 *
 * <p>The use between the last regeneration and the first day is not known, and it decides on which days the bed is
 * exhausted. So the days are run once from each of several counts, and the runs averaged: of a meter from {@value #METER_STARTS},
 * evenly over one cycle; of a clock by days from each of its nights; of a clock by weekdays, whose last date is known, from one.
 *
 * <pre>meter: litres = p T,  nights = p T / u,  p = (q + 0.5) / {@value #METER_STARTS}
 * clock: litres = j u,  nights = j</pre>
 *
 * <p>T litres at which the meter calls; u mean use of the days; q 0 to {@value #METER_STARTS} - 1; j nights from 0 to the next
 * regeneration. A meter whose override comes before T litres are used is a clock with that interval.
 *
 * <p>Days that are missing are left out, not filled: bed and control go on from the day before them to the day after.
 *
 * <p>Source: the starts are those of a back-test on [DAIAD] homes.
 */
public final class Replay {

    /** From how many counts a meter is run. */
    public static final int METER_STARTS = 12;

    /** Litres and nights since the last regeneration. */
    private record Count(double litres, int nights) {
    }

    private Replay() {
    }

    /** Mean of the runs, scaled to a year; {@link YearlyTotals#in} scales it back to the known days. */
    public static YearlyTotals yearly(MeteredDays days, double hardnessMilligramsPerLitre, Regeneration regeneration,
            Policy policy) {
        Guard.notNegative(hardnessMilligramsPerLitre, "hardnessMilligramsPerLitre");
        List<Count> starts = starts(days, policy);
        return starts.stream().map(start -> YearlyTotals.of(Simulation.startingWith(start.litres(), start.nights(),
                hardnessMilligramsPerLitre, regeneration, policy).through(days), days.known().length))
                .reduce(YearlyTotals::plus).orElseThrow().times(1.0 / starts.size());
    }

    private static List<Count> starts(MeteredDays days, Policy policy) {
        double mean = days.meanLitres();
        int override = policy.overrideDays();
        if (!policy.weekdays().isEmpty()) {
            int since = nightsSince(policy.weekdays(), days.firstDate().getDayOfWeek());
            int nights = override == Policy.NO_OVERRIDE ? since : since % override;
            return List.of(new Count(nights * mean, nights));
        }
        int longest = policy.everyDays().orElse(Policy.MAX_INTERVAL_DAYS);
        int cycle = override == Policy.NO_OVERRIDE ? longest : Math.min(longest, override);
        double call = Math.max(0, policy.callLitres());
        if (policy.byClock() || override != Policy.NO_OVERRIDE && cycle * mean < call) {
            return IntStream.range(0, cycle).mapToObj(night -> new Count(night * mean, night)).toList();
        }
        return IntStream.range(0, METER_STARTS).mapToDouble(start -> (start + 0.5) / METER_STARTS * call)
                .mapToObj(litres -> new Count(litres, mean > 0 ? (int) (litres / mean) : 0)).toList();
    }

    /** Nights from the last date of a clock to the first day, which may be such a date itself. */
    private static int nightsSince(Set<DayOfWeek> weekdays, DayOfWeek first) {
        int nights = 0;
        while (!weekdays.contains(first.minus(nights))) {
            nights++;
        }
        return nights;
    }
}
