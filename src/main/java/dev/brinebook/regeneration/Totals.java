// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

/**
 * What a policy did over all the days of a trial; nothing in it is scaled to a year.
 *
 * @param regenerations how often it regenerated
 * @param overrides how many of them the day override started
 * @param saltGrams salt used
 * @param waterLitres water used to regenerate
 * @param throughBedLitres household water that passed the bed, softened or not
 * @param bypassedLitres household water that passed hard while a regeneration ran by day
 * @param hardDays days on which the bed was exhausted before the day was over
 * @param hardLitres household water that passed an exhausted bed
 * @param removedGrams hardness taken up by the bed, as CaCO3
 * @param regeneratedGrams hardness driven off the bed by regenerations, as CaCO3
 * @param unusedGrams capacity that was still in the bed when it was regenerated, as CaCO3
 */
public record Totals(int regenerations, int overrides, double saltGrams, double waterLitres, double throughBedLitres,
                     double bypassedLitres, int hardDays, double hardLitres, double removedGrams,
                     double regeneratedGrams, double unusedGrams) {
}
