// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.measurement;

/**
 * A quantity calculated from readings.
 *
 * @param <K> the names of the readings
 */
@FunctionalInterface
public interface Formula<K extends Enum<K>> {

    /** The quantity, in its base unit, of readings that may each be a little off. */
    double value(Values<K> readings);

    /**
     * The numbers of readings by their names.
     *
     * @param <K> the names of the readings
     */
    @FunctionalInterface
    interface Values<K extends Enum<K>> {

        /** The number of a reading, in its base unit. */
        double of(K reading);
    }
}
