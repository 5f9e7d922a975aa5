// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.household.Occupancy;
import dev.brinebook.household.SampledYears;
import dev.brinebook.household.UseModel;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;

/**
 * Years of a household that are drawn once, and what policies do in them, for what has no exact long run: the same years for every
 * policy, so that two compare. Not thread-safe.
 */
final class DrawnYears {

    private static final long SEED = 20_260_101;
    private static final LocalDate START = LocalDate.of(2001, 1, 1);

    private final UseModel model;
    private final Map<Integer, SampledYears> days = new HashMap<>();
    private final Map<Asked, SimulatedYears> simulated = new HashMap<>();
    /** Those in which the bed is never exhausted, whatever the hardness. */
    private final Map<Controlled, SimulatedYears> soft = new HashMap<>();

    private record Asked(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration, int years) {
    }

    /** What decides years in which the bed is never exhausted. */
    private record Controlled(Policy policy, double minutes, int years) {
    }

    /** Nothing is drawn before it is asked for. */
    DrawnYears(UseModel model) {
        Occupancy occupancy = model.occupancy().longRun().filter(chain -> chain.leavePerDay() > 0)
                .map(Occupancy.class::cast).orElse(Occupancy.ALWAYS);
        this.model = new UseModel(model.means(), model.variation(), model.monthFactors(), occupancy);
    }

    /** A number of years under a policy. */
    SimulatedYears of(Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration, int years) {
        Controlled controlled = new Controlled(policy, regeneration.minutes(), years);
        SimulatedYears known = soft.get(controlled);
        if (known == null || !known.areSoft(hardnessMilligramsPerLitre, regeneration)) {
            known = simulated.computeIfAbsent(new Asked(policy, hardnessMilligramsPerLitre, regeneration, years), asked ->
                    SimulatedYears.of(days(years), hardnessMilligramsPerLitre, regeneration, policy));
            if (known.areSoft(hardnessMilligramsPerLitre, regeneration)) {
                soft.put(controlled, known);
            }
        }
        return known;
    }

    private SampledYears days(int years) {
        return days.computeIfAbsent(years, count -> new SampledYears(model, START, count, SEED));
    }
}
