// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import java.time.Instant;

/**
 * A reading whose moment is known.
 *
 * @param row its place in the input
 * @param moment when it was taken
 * @param value in the unit of the meter
 */
record TimedReading(int row, Instant moment, double value) {
}
