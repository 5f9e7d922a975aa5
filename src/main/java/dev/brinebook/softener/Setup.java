package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.HourlyProfile;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.HardDays;
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

    /** What is to be expected of a year with these settings. */
    public Year year(Duty duty) {
        Regeneration regeneration = regeneration(duty.water().temperatureCelsius());
        YearlyTotals totals = duty.year(policy, regeneration);
        return new Year(this, duty, totals, hardWhileRegeneratingLitres(totals, regeneration, duty));
    }

    /** Hard days to be expected of a year, with how far years differ. */
    public HardDays hardDays(Duty duty) {
        return duty.hardDays(policy, regeneration(duty.water().temperatureCelsius()));
    }

    /** What happens on the duty's days, with dates: as they were measured, else an example of a year. */
    public Outcome onDays(Duty duty) {
        return Simulation.simulate(new Trial(duty.days(), duty.loadMgPerL(),
                regeneration(duty.water().temperatureCelsius())), policy);
    }

    /** By night, what the hours of a regeneration draw on a mean day; by day, what passed by; of twin beds, nothing. */
    private double hardWhileRegeneratingLitres(YearlyTotals year, Regeneration regeneration, Duty duty) {
        return policy.startsAtOnce() ? year.bypassedLitres()
                : year.regenerations() * HourlyProfile.share(regenerationHour, regeneration.minutes()) * duty.meanLitres();
    }

    /**
     * What is to be expected of a year with given settings.
     *
     * @param setup the settings
     * @param duty the household
     * @param totals what is used and delivered
     * @param hardWhileRegeneratingLitres hard water drawn while regenerations run, by the hourly profile of use
     */
    public record Year(Setup setup, Duty duty, YearlyTotals totals, double hardWhileRegeneratingLitres) {

        /** Hard days to be expected, with how far years differ. */
        public HardDays hardDays() {
            return setup.hardDays(duty);
        }

        /** What happens on the duty's days, with dates. */
        public Outcome onDays() {
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
