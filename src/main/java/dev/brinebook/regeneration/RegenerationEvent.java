// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.time.LocalDate;

/**
 * One regeneration.
 *
 * @param date when it runs: the date after the day that called for it, or that day when it starts at once
 * @param reason what started it
 * @param unusedGrams capacity still in the bed, as CaCO3, and so thrown away
 */
public record RegenerationEvent(LocalDate date, Reason reason, double unusedGrams) {
}
