// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.household.DailyUse;
import java.time.DayOfWeek;

/** What a controller remembers of the last four days of each weekday. Changes in place; used by one run. */
final class WeekdayHistory {

    /** Weeks that controllers look back. Source: [CP-CYCLE]. */
    static final int WEEKS = 4;
    private static final int WEEKDAYS = 7;

    private final double[] litres = new double[WEEKS * WEEKDAYS];
    private final int[] seen = new int[WEEKDAYS];

    /** What a controller has seen at the end of these days. */
    static WeekdayHistory of(DailyUse days) {
        WeekdayHistory history = new WeekdayHistory();
        for (int i = Math.max(0, days.size() - WEEKS * WEEKDAYS); i < days.size(); i++) {
            history.add(days.firstDate().plusDays(i).getDayOfWeek(), days.useLitres(i));
        }
        return history;
    }

    void add(DayOfWeek day, double useLitres) {
        int weekday = day.ordinal();
        litres[weekday * WEEKS + seen[weekday] % WEEKS] = useLitres;
        seen[weekday]++;
    }

    /** Whether a weekday was seen so often that nothing of it is guessed. */
    boolean knows(DayOfWeek day) {
        return seen[day.ordinal()] >= WEEKS;
    }

    /** Largest of the last four days of a weekday that is known. */
    double largestLitres(DayOfWeek day) {
        int from = day.ordinal() * WEEKS;
        double largest = 0;
        for (int i = from; i < from + WEEKS; i++) {
            largest = Math.max(largest, litres[i]);
        }
        return largest;
    }

    /** Mean of the last four days of a weekday that is known. */
    double meanLitres(DayOfWeek day) {
        int from = day.ordinal() * WEEKS;
        double sum = 0;
        for (int i = from; i < from + WEEKS; i++) {
            sum += litres[i];
        }
        return sum / WEEKS;
    }
}
