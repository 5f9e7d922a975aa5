// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.MassUnit;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.resin.CapacityTable;
import java.util.ArrayList;
import java.util.List;

/** How a controller takes the salt of a regeneration, and in which steps. */
public sealed interface SaltStep {

    double MIN_MASS_GRAMS = 1;
    double MAX_MASS_GRAMS = 1_000;
    double MIN_MINUTES = 0.01;
    double MAX_MINUTES = 10;
    /** A number of steps that misses a whole one by this is taken as that one. */
    double TOLERANCE = 1e-6;

    /** One step as a dose of the softener's salt, g/L of resin. */
    double gramsPerLitre(Softener softener, double celsius);

    /**
     * The doses to try, g/L of the softener's salt, lowest first: all that can be set from the lowest to the highest
     * that is recommended, thinned to about half a pound per cubic foot apart. Where none lies between,
     * the first above; none where that is more than the tables cover.
     *
     * @param lowestPoundsPerCubicFoot lowest dose of sodium chloride that is recommended for the water
     */
    default List<Double> dosesGramsPerLitre(Softener softener, double lowestPoundsPerCubicFoot, double celsius) {
        double step = gramsPerLitre(softener, celsius);
        double lowest = DoseChoice.grams(softener, lowestPoundsPerCubicFoot);
        double highest = DoseChoice.grams(softener, DoseChoice.HIGHEST_POUNDS_PER_CUBIC_FOOT);
        long stride = Math.max(1, Math.round(DoseChoice.grams(softener, DoseChoice.STEP_POUNDS_PER_CUBIC_FOOT) / step));
        List<Double> doses = new ArrayList<>();
        long first = (long) Math.ceil(lowest / step - TOLERANCE);
        for (long steps = first; steps * step <= highest * (1 + TOLERANCE); steps += stride) {
            doses.add(steps * step);
        }
        if (doses.isEmpty() && first * step <= CapacityTable.maxSaltDoseGramsPerLitre(softener.salt())) {
            doses.add(first * step);
        }
        return doses;
    }

    /** The step by litre of resin, so that beds of any size share their doses: for a bed that has no controller yet. */
    default SaltStep forAnyBed() {
        return GramsPerLitre.TENS;
    }

    /** A dose rounded up to a step, but not above what the tables cover, g/L of the softener's salt. */
    default double upGramsPerLitre(double gramsPerLitre, Softener softener, double celsius) {
        double step = gramsPerLitre(softener, celsius);
        double most = CapacityTable.maxSaltDoseGramsPerLitre(softener.salt());
        return Math.min(Math.max(gramsPerLitre, most), step * Math.ceil(gramsPerLitre / step - TOLERANCE));
    }

    /** A dose of sodium chloride, or as many equivalents of another salt. */
    record GramsPerLitre(double stepGramsPerLitre) implements SaltStep {

        /** The usual one. */
        static final GramsPerLitre TENS = new GramsPerLitre(10);

        public GramsPerLitre {
            Guard.positive(stepGramsPerLitre, "stepGramsPerLitre");
        }

        @Override
        public double gramsPerLitre(Softener softener, double celsius) {
            return softener.salt().fromSodiumChloride(stepGramsPerLitre);
        }

        @Override
        public SaltStep forAnyBed() {
            return this;
        }
    }

    /** A dose of sodium chloride in the units of the United States, or as many equivalents of another salt. */
    record PoundsPerCubicFoot(double stepPoundsPerCubicFoot) implements SaltStep {

        /** Step of the salt where the answer is in US units, lb/ft3. */
        public static final double ASSUMED_STEP = DoseChoice.STEP_POUNDS_PER_CUBIC_FOOT;
        /** The usual one. */
        static final PoundsPerCubicFoot HALVES = new PoundsPerCubicFoot(ASSUMED_STEP);

        public PoundsPerCubicFoot {
            Guard.positive(stepPoundsPerCubicFoot, "stepPoundsPerCubicFoot");
        }

        @Override
        public double gramsPerLitre(Softener softener, double celsius) {
            return DoseChoice.grams(softener, stepPoundsPerCubicFoot);
        }

        @Override
        public SaltStep forAnyBed() {
            return this;
        }

        @Override
        public List<Double> dosesGramsPerLitre(Softener softener, double lowestPoundsPerCubicFoot, double celsius) {
            List<Double> doses = new ArrayList<>();
            int steps = (int) Math.round((DoseChoice.HIGHEST_POUNDS_PER_CUBIC_FOOT - lowestPoundsPerCubicFoot)
                    / stepPoundsPerCubicFoot);
            for (int i = 0; i <= steps; i++) {
                doses.add(DoseChoice.grams(softener, lowestPoundsPerCubicFoot + i * stepPoundsPerCubicFoot));
            }
            return doses;
        }

        @Override
        public double upGramsPerLitre(double gramsPerLitre, Softener softener, double celsius) {
            double pounds = SaltDoseUnit.POUND_PER_CUBIC_FOOT.fromBase(gramsPerLitre);
            return SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(stepPoundsPerCubicFoot
                    * Math.ceil(pounds / stepPoundsPerCubicFoot - TOLERANCE));
        }
    }

    /** A mass of salt for each regeneration. */
    record Mass(MassUnit unit, double step) implements SaltStep {

        public Mass {
            Guard.within(1000 * unit.toBase(step), MIN_MASS_GRAMS, MAX_MASS_GRAMS, "step in grams");
        }

        @Override
        public double gramsPerLitre(Softener softener, double celsius) {
            return 1000 * unit.toBase(step) / softener.bed().resinLitres();
        }

        /** Whether a controller with this step can be set to a mass, in the unit of the step. */
        public boolean canBeSet(double mass) {
            return Math.abs(mass / step - Math.rint(mass / step)) <= TOLERANCE;
        }
    }

    /** Minutes of refill, in which the water dissolves the salt. */
    record RefillMinutes(double stepMinutes) implements SaltStep {

        public RefillMinutes {
            Guard.within(stepMinutes, MIN_MINUTES, MAX_MINUTES, "stepMinutes");
        }

        @Override
        public double gramsPerLitre(Softener softener, double celsius) {
            double flow = softener.flows().refillOnSiteLitresPerMinute();
            return CycleDesign.saltGramsOfRefill(softener.salt(), stepMinutes * flow, celsius) / softener.bed().resinLitres();
        }
    }
}
