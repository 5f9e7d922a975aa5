// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.household.Days;
import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.RandomAccess;

/** Notes regenerations as they happen in plain arrays, because a simulation must not allocate for each of them. */
final class EventLog {

    private int[] dateIndexes = new int[64];
    private Reason[] reasons = new Reason[64];
    private double[] unusedGrams = new double[64];
    private int size;

    void add(int dateIndex, Reason reason, double unused) {
        if (size == dateIndexes.length) {
            dateIndexes = Arrays.copyOf(dateIndexes, 2 * size);
            reasons = Arrays.copyOf(reasons, 2 * size);
            unusedGrams = Arrays.copyOf(unusedGrams, 2 * size);
        }
        dateIndexes[size] = dateIndex;
        reasons[size] = reason;
        unusedGrams[size] = unused;
        size++;
    }

    int size() {
        return size;
    }

    /** The events, created when read; nothing may be added to the log afterwards. */
    List<RegenerationEvent> on(Days days) {
        return new View(this, days);
    }

    private static final class View extends AbstractList<RegenerationEvent> implements RandomAccess {

        private final EventLog log;
        private final Days days;

        View(EventLog log, Days days) {
            this.log = log;
            this.days = days;
        }

        @Override
        public RegenerationEvent get(int index) {
            if (!(index >= 0 && index < log.size)) {
                throw new IndexOutOfBoundsException("event " + index + " of " + log.size);
            }
            return new RegenerationEvent(days.dateOf(log.dateIndexes[index]), log.reasons[index], log.unusedGrams[index]);
        }

        @Override
        public int size() {
            return log.size;
        }
    }
}
