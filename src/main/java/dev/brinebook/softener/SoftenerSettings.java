// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.HourlyProfile;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.HardDays;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.Simulation;
import dev.brinebook.regeneration.SimulationInput;
import dev.brinebook.regeneration.SimulationResult;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.resin.CapacityTable;
import java.util.Map;
import java.util.Objects;

/**
 * A softener with everything that is set on it, so that one setting can be changed and the year run again.
 *
 * @param softener the softener, its drain flow included
 * @param saltDoseGramsPerLitre salt that really reaches the bed
 * @param minutes minutes set for each step, as far as known
 * @param policy what starts its regenerations
 * @param regenerationHour hour at which they run
 */
public record SoftenerSettings(Softener softener, double saltDoseGramsPerLitre, Map<CycleStep.Kind, Double> minutes, Policy policy,
        int regenerationHour) {

    public SoftenerSettings {
        Guard.positive(saltDoseGramsPerLitre, "saltDoseGramsPerLitre");
        Guard.within(regenerationHour, 0, 23, "regenerationHour");
        minutes = Map.copyOf(minutes);
        Objects.requireNonNull(policy, "policy");
    }

    public SoftenerSettings with(Softener other) {
        return new SoftenerSettings(other, saltDoseGramsPerLitre, minutes, policy, regenerationHour);
    }

    public SoftenerSettings withDose(double otherGramsPerLitre, Map<CycleStep.Kind, Double> otherMinutes) {
        return new SoftenerSettings(softener, otherGramsPerLitre, otherMinutes, policy, regenerationHour);
    }

    public SoftenerSettings with(Policy other) {
        return new SoftenerSettings(softener, saltDoseGramsPerLitre, minutes, other, regenerationHour);
    }

    public SoftenerSettings atHour(int otherHour) {
        return new SoftenerSettings(softener, saltDoseGramsPerLitre, minutes, policy, otherHour);
    }

    /**
     * The dose that the capacity is counted with: the real one, or the nearest end of the table's range. More salt than
     * the table knows adds next to nothing; less than it knows is reported as a fault of its own.
     */
    public double countedDoseGramsPerLitre() {
        return Math.max(CapacityTable.minSaltDoseGramsPerLitre(softener.salt()),
                Math.min(CapacityTable.maxSaltDoseGramsPerLitre(softener.salt()), saltDoseGramsPerLitre));
    }

    /** Capacity that a regeneration really restores, grams as CaCO3. */
    public double capacityGrams() {
        return softener.capacityGrams(countedDoseGramsPerLitre());
    }

    /** The regeneration as it runs. */
    public Cycle cycle(double celsius) {
        return softener.cycleDesign(countedDoseGramsPerLitre(), celsius).cycle().retimed(minutes);
    }

    /** What one regeneration really restores and uses. */
    public Regeneration regeneration(double celsius) {
        return cycle(celsius).regeneration(capacityGrams(), softener.saltGrams(saltDoseGramsPerLitre));
    }

    /** Expected totals of a year with these settings. */
    public Year year(DesignConditions duty) {
        Regeneration regeneration = regeneration(duty.water().temperatureCelsius());
        YearlyTotals totals = duty.year(policy, regeneration);
        return new Year(this, duty, totals, hardWhileRegeneratingLitres(totals, regeneration, duty));
    }

    /** Hard days to be expected of a year, with how far years differ. */
    public HardDays hardDays(DesignConditions duty) {
        return duty.hardDays(policy, regeneration(duty.water().temperatureCelsius()));
    }

    /** Events on the days of the design conditions, with dates: the measured days, otherwise an example of a year. */
    public SimulationResult onDays(DesignConditions duty) {
        return Simulation.simulate(new SimulationInput(duty.days(), duty.loadMgPerL(),
                regeneration(duty.water().temperatureCelsius())), policy);
    }

    /** By night, the use of a mean day in the hours of a regeneration; by day, what passed by; of twin beds, nothing. */
    private double hardWhileRegeneratingLitres(YearlyTotals year, Regeneration regeneration, DesignConditions duty) {
        return policy.startsAtOnce() ? year.bypassedLitres()
                : year.regenerations() * HourlyProfile.share(regenerationHour, regeneration.minutes()) * duty.meanLitres();
    }

    /**
     * Expected totals of a year with given settings.
     *
     * @param setup the settings
     * @param duty the household
     * @param totals what is used and delivered
     * @param hardWhileRegeneratingLitres hard water used while regenerations run, by the hourly profile of use
     */
    public record Year(SoftenerSettings setup, DesignConditions duty, YearlyTotals totals, double hardWhileRegeneratingLitres) {

        /** Hard days to be expected, with how far years differ. */
        public HardDays hardDays() {
            return setup.hardDays(duty);
        }

        /** What happens on the duty's days, with dates. */
        public SimulationResult onDays() {
            return setup.onDays(duty);
        }

        /** What changes when {@code other} is done instead: this less the other. */
        public Difference minus(Year other) {
            return new Difference((totals.saltGrams() - other.totals.saltGrams()) / 1000,
                    totals.waterLitres() - other.totals.waterLitres(), totals.hardDays() - other.totals.hardDays(),
                    (totals.hardLitres() - other.totals.hardLitres())
                            + (hardWhileRegeneratingLitres - other.hardWhileRegeneratingLitres));
        }
    }

    /**
     * What a setting costs in a year against a better one; negative where the better one takes more.
     *
     * @param saltKilograms salt
     * @param waterLitres regeneration water
     * @param hardDays days on which the bed is exhausted
     * @param hardLitres hard water delivered, that during regenerations included
     */
    public record Difference(double saltKilograms, double waterLitres, double hardDays, double hardLitres) {

        public static final Difference NONE = new Difference(0, 0, 0, 0);

        /** Both together. */
        public Difference plus(Difference other) {
            return new Difference(saltKilograms + other.saltKilograms, waterLitres + other.waterLitres, hardDays + other.hardDays,
                    hardLitres + other.hardLitres);
        }
    }
}
