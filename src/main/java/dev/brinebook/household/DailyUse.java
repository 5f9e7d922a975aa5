// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import java.time.LocalDate;

/** Use of consecutive days, whether stored, as in {@link Days}, or calculated when asked for, as in {@link SampledYears}. */
public interface DailyUse {

    LocalDate firstDate();

    /** Number of days. */
    int size();

    /** Use of the day with this index, the first being 0. */
    double useLitres(int index);
}
