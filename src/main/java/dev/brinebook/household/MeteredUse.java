// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import java.time.Duration;
import java.time.Instant;

/**
 * Water that passed between two moments.
 *
 * @param from when it began
 * @param to when it ended, later than from
 * @param litres what passed
 * @param row the reading it comes from
 */
record MeteredUse(Instant from, Instant to, double litres, int row) {

    Duration time() {
        return Duration.between(from, to);
    }

    double litresPerHour() {
        return litres * 3_600 / time().toSeconds();
    }

    /** The part of it between two moments, by time. */
    double litresWithin(Instant start, Instant end) {
        return litres * secondsWithin(start, end) / time().toSeconds();
    }

    /** How long it ran between two moments. */
    long secondsWithin(Instant start, Instant end) {
        Instant first = from.isAfter(start) ? from : start;
        Instant last = to.isBefore(end) ? to : end;
        return Math.max(0, Duration.between(first, last).toSeconds());
    }
}
