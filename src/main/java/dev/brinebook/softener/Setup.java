package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.HourlyProfile;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.Outcome;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.Simulation;
import dev.brinebook.regeneration.Trial;
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
public record Setup(Softener softener, double saltDoseGramsPerLitre, Map<CycleStep.Kind, Double> minutes, Policy policy,
        int regenerationHour) {

    public Setup {
        Guard.positive(saltDoseGramsPerLitre, "saltDoseGramsPerLitre");
        Guard.within(regenerationHour, 0, 23, "regenerationHour");
        minutes = Map.copyOf(minutes);
        Objects.requireNonNull(policy, "policy");
    }

    public Setup with(Softener other) {
        return new Setup(other, saltDoseGramsPerLitre, minutes, policy, regenerationHour);
    }

    public Setup withDose(double otherGramsPerLitre, Map<CycleStep.Kind, Double> otherMinutes) {
        return new Setup(softener, otherGramsPerLitre, otherMinutes, policy, regenerationHour);
    }

    public Setup with(Policy other) {
        return new Setup(softener, saltDoseGramsPerLitre, minutes, other, regenerationHour);
    }

    public Setup atHour(int otherHour) {
        return new Setup(softener, saltDoseGramsPerLitre, minutes, policy, otherHour);
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

    /** A year of the duty's days with these settings. */
    public Year year(Duty duty) {
        Regeneration regeneration = regeneration(duty.water().temperatureCelsius());
        Outcome outcome = Simulation.simulate(new Trial(duty.days(), duty.hardness().totalMgPerL(), regeneration), policy);
        return new Year(outcome, outcome.yearly(), hardWhileRegeneratingLitres(outcome.yearly(), regeneration, duty));
    }

    /** By night, what the hours of a regeneration draw on a mean day; by day, what passed by; of twin beds, nothing. */
    private double hardWhileRegeneratingLitres(YearlyTotals year, Regeneration regeneration, Duty duty) {
        return policy.startsAtOnce() ? year.bypassedLitres()
                : year.regenerations() * HourlyProfile.share(regenerationHour, regeneration.minutes())
                        * duty.days().meanLitres();
    }

    /**
     * A year with given settings.
     *
     * @param outcome what happened on the days
     * @param totals what was used and delivered, for 365 days
     * @param hardWhileRegeneratingLitres hard water drawn while regenerations run, by the hourly profile of use
     */
    public record Year(Outcome outcome, YearlyTotals totals, double hardWhileRegeneratingLitres) {

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
    }
}
