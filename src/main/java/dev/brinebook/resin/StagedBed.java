// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import static dev.brinebook.resin.StageEquilibrium.CALCIUM;
import static dev.brinebook.resin.StageEquilibrium.IONS;
import static dev.brinebook.resin.StageEquilibrium.MAGNESIUM;
import static dev.brinebook.resin.StageEquilibrium.POTASSIUM;
import static dev.brinebook.resin.StageEquilibrium.SODIUM;

/**
 * The state of a bed of equal stages in exchange equilibrium, and how water moves it on: in plug flow.
 *
 * <p>Working memory of one calculation: primitive arrays that change in place, never shared. All amounts are equivalents
 * per litre of the stage, in resin and pore water together; all concentrations equivalents per litre of water.
 *
 * <p>A shift moves the pore water on by one stage, then every stage comes to equilibrium. This is the advection of
 * [PHREEQC], against which the bed is checked. A brine stays unmixed with the water before it.
 */
final class StagedBed {

    /** Relative difference of strength below which water passes as one with that in the pores. */
    private static final double EVEN_STRENGTH = 1e-9;

    private final int stages;
    private final double voids;
    private final StageEquilibrium equilibrium;
    /** Equivalents of ion i in stage s at i · stages + s. */
    private final double[] total;
    private final double[] water;
    private final double[] strength;
    private final double[] ratio;
    private final double[] inflow = new double[IONS];
    private final double[] outflow = new double[IONS];
    private final double[] supply = new double[IONS];

    private StagedBed(int stages, double voids, StageEquilibrium equilibrium) {
        this.stages = stages;
        this.voids = voids;
        this.equilibrium = equilibrium;
        total = new double[IONS * stages];
        water = new double[IONS * stages];
        strength = new double[stages];
        ratio = new double[stages];
    }

    /** A bed at rest with a water, as after an unlimited service run. */
    static StagedBed inEquilibriumWith(Resin resin, FeedWater feed) {
        StagedBed bed = new StagedBed(resin.stages(), resin.voidShare(), new StageEquilibrium(resin));
        double[] ions = feed.ions();
        double strength = sum(ions);
        double ratio = bed.equilibrium.ratioIn(ions, strength);
        for (int s = 0; s < bed.stages; s++) {
            bed.strength[s] = strength;
            bed.ratio[s] = ratio;
            for (int i = 0; i < IONS; i++) {
                bed.water[i * bed.stages + s] = ions[i];
                bed.total[i * bed.stages + s] = ions[i] * (bed.voids + bed.equilibrium.partition(i, ratio, strength));
            }
        }
        return bed;
    }

    StagedBed copy() {
        StagedBed copy = new StagedBed(stages, voids, equilibrium);
        copy.copyFrom(this);
        return copy;
    }

    /** Takes on the state of another bed of the same resin. */
    void copyFrom(StagedBed other) {
        System.arraycopy(other.total, 0, total, 0, total.length);
        System.arraycopy(other.water, 0, water, 0, water.length);
        System.arraycopy(other.strength, 0, strength, 0, stages);
        System.arraycopy(other.ratio, 0, ratio, 0, stages);
    }

    /**
     * Takes on a weighted sum of beds at rest with the same water; the weights sum to 1.
     *
     * @return whether that is a bed: false, with nothing changed, where it would hold less than nothing of an ion
     */
    boolean blend(StagedBed[] beds, double[] weights) {
        double[] sum = new double[total.length];
        for (int k = 0; k < beds.length; k++) {
            for (int i = 0; i < sum.length; i++) {
                sum[i] += weights[k] * beds[k].total[i];
            }
        }
        for (double amount : sum) {
            if (amount < 0) {
                return false;
            }
        }
        System.arraycopy(beds[0].strength, 0, strength, 0, stages);
        System.arraycopy(beds[0].ratio, 0, ratio, 0, stages);
        System.arraycopy(sum, 0, total, 0, sum.length);
        for (int s = 0; s < stages; s++) {
            for (int i = 0; i < IONS; i++) {
                supply[i] = total[i * stages + s];
            }
            equilibrate(s, voids);
        }
        return true;
    }

    /** Sum of the products of two differences of beds: (a − b) · (c − d). */
    static double product(StagedBed a, StagedBed b, StagedBed c, StagedBed d) {
        double sum = 0;
        for (int i = 0; i < a.total.length; i++) {
            sum += (a.total[i] - b.total[i]) * (c.total[i] - d.total[i]);
        }
        return sum;
    }

    /** Litres in the pores of one stage, per litre of bed: what one shift brings. */
    double bedVolumesPerShift() {
        return voids / stages;
    }

    /**
     * Passes as much of a water as {@code shifts} bring, upwards against the direction of service.
     *
     * <p>Up to one shift the pore water of each stage gives way to that of the stage before, in that share. More shifts at
     * once are for water as strong as that in the pores: a step of second order between the water before and after it,
     *
     * <pre>θ = (1 − 1/n) / 2</pre>
     *
     * <p>θ share of the water after; n shifts. It comes to the same as n shifts one by one, but for the third power of the
     * step; at n = 1 it is the shift itself.
     */
    void advance(double[] feed, double shifts, boolean upwards) {
        double litres = shifts * voids;
        System.arraycopy(feed, 0, inflow, 0, IONS);
        double inflowStrength = sum(feed);
        for (int n = 0; n < stages; n++) {
            int s = upwards ? stages - 1 - n : n;
            double late = lateShare(s, shifts, inflowStrength);
            for (int i = 0; i < IONS; i++) {
                int here = i * stages + s;
                outflow[i] = (1 - late) * water[here];
                supply[i] = total[here] + litres * (inflow[i] - outflow[i]);
            }
            double early = (1 - late) * strength[s];
            strength[s] = (voids * strength[s] + litres * (inflowStrength - early)) / (voids + late * litres);
            inflowStrength = early + late * strength[s];
            equilibrate(s, voids + late * litres);
            for (int i = 0; i < IONS; i++) {
                int here = i * stages + s;
                outflow[i] += late * water[here];
                total[here] += litres * (inflow[i] - outflow[i]);
                inflow[i] = outflow[i];
            }
        }
    }

    /**
     * How much of what leaves a stage is its water after the step; all of it, as from a stirred vessel, where less would
     * take more out of the stage than is in it, or would make the strength of its water swing.
     */
    private double lateShare(int s, double shifts, double inflowStrength) {
        if (shifts <= 1) {
            return 0;
        }
        if (Math.abs(strength[s] - inflowStrength) > EVEN_STRENGTH * inflowStrength) {
            return 1;
        }
        double late = 0.5 - 0.5 / shifts;
        for (int i = 0; i < IONS; i++) {
            int here = i * stages + s;
            if (total[here] + shifts * voids * (inflow[i] - (1 - late) * water[here]) < 0) {
                return 1;
            }
        }
        return late;
    }

    /** Shares {@link #supply} out between the resin of a stage and {@code litres} of water per litre of it. */
    private void equilibrate(int s, double litres) {
        ratio[s] = equilibrium.ratio(supply, strength[s], litres, ratio[s]);
        equilibrium.share(supply, strength[s], litres, ratio[s], water, s, stages);
    }

    /** Whether the water in all pores is as strong as {@code feed}. */
    boolean isAsStrongAs(double[] feed) {
        double even = sum(feed);
        for (double here : strength) {
            if (Math.abs(here - even) > EVEN_STRENGTH * even) {
                return false;
            }
        }
        return true;
    }

    /** Whether the water in the pores is as strong as that of another bed. */
    boolean isAsStrongAs(StagedBed other) {
        return Math.abs(strength[0] - other.strength[0]) <= EVEN_STRENGTH * strength[0];
    }

    /** An ion in the water of the last stage. */
    double exit(int ion) {
        return water[ion * stages + stages - 1];
    }

    double exitHardness() {
        return exit(CALCIUM) + exit(MAGNESIUM);
    }

    /** Hardness of what left in the last move, on the mean. */
    double outflowHardness() {
        return outflow[CALCIUM] + outflow[MAGNESIUM];
    }

    /** An ion in resin and pores, per litre of bed. */
    double held(int ion) {
        double sum = 0;
        for (int s = 0; s < stages; s++) {
            sum += total[ion * stages + s];
        }
        return sum / stages;
    }

    double heldHardness() {
        return held(CALCIUM) + held(MAGNESIUM);
    }

    private static double sum(double[] ions) {
        return ions[CALCIUM] + ions[MAGNESIUM] + ions[SODIUM] + ions[POTASSIUM];
    }
}
