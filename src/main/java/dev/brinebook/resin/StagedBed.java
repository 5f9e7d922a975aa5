package dev.brinebook.resin;

import static dev.brinebook.resin.StageEquilibrium.CALCIUM;
import static dev.brinebook.resin.StageEquilibrium.IONS;
import static dev.brinebook.resin.StageEquilibrium.MAGNESIUM;
import static dev.brinebook.resin.StageEquilibrium.POTASSIUM;
import static dev.brinebook.resin.StageEquilibrium.SODIUM;

/**
 * The state of a bed of equal mixing stages in exchange equilibrium, and the two ways in which water moves it on.
 *
 * <p>Working memory of one calculation: primitive arrays that change in place, never shared. All amounts are equivalents
 * per litre of the stage, in resin and pore water together; all concentrations equivalents per litre of water.
 *
 * <ul>
 * <li>{@link #shift}: the pore water moves on by one stage, then every stage comes to equilibrium. This is the advection of
 * [PHREEQC], against which the bed is checked. A brine stays unmixed with the water before it.
 * <li>{@link #flow}: the stages are stirred vessels that water flows through, brine and water mix in them. Any length of
 * step, so a service run takes a hundred times fewer; what {@link CyclicColumn} uses.
 * </ul>
 * In service both come to the same, since the pores hold next to nothing. In brine the mixing costs about 4 % of the
 * capacity at 6 lb/ft³ of salt and 1 % at 15.
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

    /** A bed at rest with a water, as after an endless service run. */
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

    /** Moves the pore water on by one stage, in the direction of service. */
    void shift(double[] feed) {
        for (int i = 0; i < IONS; i++) {
            outflow[i] = water[i * stages + stages - 1];
        }
        for (int s = stages - 1; s >= 0; s--) {
            for (int i = 0; i < IONS; i++) {
                int here = i * stages + s;
                total[here] += voids * ((s == 0 ? feed[i] : water[here - 1]) - water[here]);
                supply[i] = total[here];
            }
            strength[s] = s == 0 ? sum(feed) : strength[s - 1];
            equilibrate(s, voids);
        }
    }

    /** Passes {@code bedVolumes} of a water through stirred stages, upwards against the direction of service. */
    void flow(double[] feed, double bedVolumes, boolean upwards) {
        double litres = bedVolumes * stages;
        System.arraycopy(feed, 0, inflow, 0, IONS);
        double inflowStrength = sum(feed);
        for (int n = 0; n < stages; n++) {
            int s = upwards ? stages - 1 - n : n;
            double late = implicitShare(s, litres, inflowStrength);
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
     * Half, the trapezoidal rule; or all, the implicit rule, where half would take more out of a stage than is in it, or
     * would make the strength of its water swing.
     */
    private double implicitShare(int s, double litres, double inflowStrength) {
        if (litres > 2 * voids && Math.abs(strength[s] - inflowStrength) > EVEN_STRENGTH * inflowStrength) {
            return 1;
        }
        for (int i = 0; i < IONS; i++) {
            int here = i * stages + s;
            if (total[here] + litres * (inflow[i] - 0.5 * water[here]) < 0) {
                return 1;
            }
        }
        return 0.5;
    }

    /** Shares {@link #supply} out between the resin of a stage and {@code litres} of water per litre of it. */
    private void equilibrate(int s, double litres) {
        ratio[s] = equilibrium.ratio(supply, strength[s], litres, ratio[s]);
        for (int i = 0; i < IONS; i++) {
            water[i * stages + s] = supply[i] / (equilibrium.partition(i, ratio[s], strength[s]) + litres);
        }
    }

    /** Whether the pore water where the flow leaves is as strong as {@code feed}, but for {@code tolerance} of it. */
    boolean isWashedOut(double[] feed, double tolerance, boolean upwards) {
        return Math.abs(strength[upwards ? 0 : stages - 1] / sum(feed) - 1) <= tolerance;
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
