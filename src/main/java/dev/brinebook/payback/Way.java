package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.DailyUse;
import dev.brinebook.household.Days;
import dev.brinebook.household.Demand;
import dev.brinebook.regeneration.ExpectedInterval;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.Simulation;
import dev.brinebook.regeneration.Totals;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.Setup;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * A way of going on, as something that softens: what stands there and how it is set, or nothing.
 *
 * @param name what the caller calls it
 * @param setup the softener and its settings; empty where nothing softens
 * @param regeneration what each of its regenerations restores and uses; empty likewise
 * @param outlay what it costs to have
 * @param visitsPerYear paid service visits
 */
public record Way(String name, Optional<Setup> setup, Optional<Regeneration> regeneration, Outlay outlay,
        double visitsPerYear) {

    /** One a week. */
    public static final double MAX_VISITS_PER_YEAR = 52;

    public Way {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(setup, "setup");
        Objects.requireNonNull(regeneration, "regeneration");
        Objects.requireNonNull(outlay, "outlay");
        Guard.within(visitsPerYear, 0, MAX_VISITS_PER_YEAR, "visitsPerYear");
    }

    /** A way in water of {@code celsius}. */
    public static Way of(String name, Optional<Setup> setup, Outlay outlay, double visitsPerYear, double celsius) {
        return new Way(name, setup, setup.map(one -> one.regeneration(celsius)), outlay, visitsPerYear);
    }

    /** What differs from the case as it was told: factors on its numbers, 1 where nothing does. */
    public record Circumstances(double hardness, double dailyUse, double capacity) {

        public static final Circumstances AS_TOLD = new Circumstances(1, 1, 1);

        public Circumstances {
            Guard.positive(hardness, "hardness");
            Guard.notNegative(dailyUse, "dailyUse");
            Guard.positive(capacity, "capacity");
        }
    }

    /** Use of days that are {@code factor} times others. */
    private record Scaled(DailyUse days, double factor) implements DailyUse {

        @Override
        public LocalDate firstDate() {
            return days.firstDate();
        }

        @Override
        public int size() {
            return days.size();
        }

        @Override
        public double useLitres(int index) {
            return factor * days.useLitres(index);
        }
    }

    /** What a year uses, counted on days. A meter is set to what is then known; a clock stays as it is. */
    public YearlyUse use(DailyUse days, Duty duty, Circumstances circumstances) {
        if (setup.isEmpty()) {
            return new YearlyUse(0, 0, 0, visitsPerYear);
        }
        Totals totals = Simulation.totals(new Scaled(days, circumstances.dailyUse()),
                circumstances.hardness() * duty.hardness().totalMgPerL(), restoring(circumstances.capacity()),
                policy(circumstances));
        double scale = (double) Days.PER_YEAR / days.size();
        return new YearlyUse(scale * totals.regenerations(), scale * totals.saltGrams() / 1000,
                scale * totals.waterLitres(), visitsPerYear);
    }

    /** What a year uses on the mean of endlessly many: smooth in everything, so that a break-even can be solved for. */
    public YearlyUse expectedUse(Duty duty, Circumstances circumstances) {
        if (setup.isEmpty()) {
            return new YearlyUse(0, 0, 0, visitsPerYear);
        }
        Regeneration each = restoring(circumstances.capacity());
        double regenerations = Days.PER_YEAR / ExpectedInterval.days(policy(circumstances),
                circumstances.dailyUse() * duty.days().meanLitres(), Demand.coefficientOfVariation(duty.days()));
        return new YearlyUse(regenerations, regenerations * each.saltGrams() / 1000,
                regenerations * each.waterLitres(), visitsPerYear);
    }

    private Regeneration restoring(double share) {
        Regeneration told = regeneration.orElseThrow();
        return new Regeneration(share * told.capacityGrams(), told.saltGrams(), told.waterLitres(),
                told.minutes());
    }

    private Policy policy(Circumstances circumstances) {
        Policy told = setup.orElseThrow().policy();
        return told.scaledTo(circumstances.dailyUse()).withMeter(Policy.nearestMeterLitres(
                told.meterVolumeLitres() * circumstances.capacity() / circumstances.hardness()));
    }
}
