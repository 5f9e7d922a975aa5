package dev.brinebook.household;

import java.time.LocalDate;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Days on end that are missing.
 *
 * @param firstDate first of them
 * @param lastDate last of them
 * @param litres what passed on all of them together, where the meter tells so much
 */
public record MeterGap(LocalDate firstDate, LocalDate lastDate, OptionalDouble litres) {

    public MeterGap {
        Objects.requireNonNull(firstDate, "firstDate");
        Objects.requireNonNull(lastDate, "lastDate");
        Objects.requireNonNull(litres, "litres");
    }
}
