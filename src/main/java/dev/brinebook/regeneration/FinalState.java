// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

/**
 * How a trial leaves the softener, after the night that follows the last day.
 *
 * @param leftGrams capacity left in the bed, as CaCO3
 * @param litresSinceLast what the meter has counted since the last regeneration
 * @param nightsSinceLast nights since the last regeneration
 */
public record FinalState(double leftGrams, double litresSinceLast, int nightsSinceLast) {
}
