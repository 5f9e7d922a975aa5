// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import java.time.LocalDate;

/**
 * A day of far more use than the home has, as of a leak or a filling.
 *
 * @param date the day
 * @param litres what the meter saw
 * @param capLitres what of it counts where the household's habits are estimated
 */
public record HighDay(LocalDate date, double litres, double capLitres) {

    /** What of the day lies above that. */
    public double aboveLitres() {
        return litres - capLitres;
    }
}
