// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import java.time.LocalDate;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Consecutive missing days.
 *
 * @param firstDate first of them
 * @param lastDate last of them
 * @param litres total of all of them, where the meter shows it
 */
public record MeterGap(LocalDate firstDate, LocalDate lastDate, OptionalDouble litres) {

    public MeterGap {
        Objects.requireNonNull(firstDate, "firstDate");
        Objects.requireNonNull(lastDate, "lastDate");
        Objects.requireNonNull(litres, "litres");
    }
}
