package dev.brinebook.household;

import java.time.LocalDate;

/** Use of consecutive days, whether it is kept, as {@link Days} are, or drawn again and again, as {@link DrawnYear} is. */
public interface DailyUse {

    LocalDate firstDate();

    /** Number of days. */
    int size();

    /** Use of the day with this index, the first being 0. */
    double useLitres(int index);
}
