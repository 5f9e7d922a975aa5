// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.commissioning;

import dev.brinebook.field.BrineTankShape;
import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.AtomicWeights;
import dev.brinebook.quantity.SurfaceFlowUnit;
import dev.brinebook.regeneration.Brine;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.ColumnResult;
import dev.brinebook.resin.PressureDrop;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.Softener;
import dev.brinebook.water.chemistry.Ion;
import java.util.Objects;
import java.util.Optional;

/**
 * The first regeneration of a softener, as its cycle is set: what readings of sound equipment show.
 *
 * @param softener the softener
 * @param cycle its regeneration, with the minutes that are set
 * @param celsius temperature of water and brine
 * @param brineTank the brine tank, if its size is known
 */
public record FirstRegeneration(Softener softener, Cycle cycle, double celsius, Optional<BrineTank> brineTank) {

    /** Service flow at which the loss of pressure is read: low end of [UFC-3-230-02], 6 gpm/ft². */
    public static final double TEST_METRES_PER_HOUR = SurfaceFlowUnit.GPM_PER_SQUARE_FOOT.toBase(6);

    /**
     * A brine tank that was measured.
     *
     * @param shape plan
     * @param widthMetres inner width at the wet height
     * @param voidShare voids between the salt
     */
    public record BrineTank(BrineTankShape shape, double widthMetres, double voidShare) {

        public BrineTank {
            Objects.requireNonNull(shape, "shape");
            Guard.positive(widthMetres, "widthMetres");
            Guard.within(voidShare, 0, 1, "voidShare");
        }
    }

    public FirstRegeneration {
        Objects.requireNonNull(softener, "softener");
        Objects.requireNonNull(cycle, "cycle");
        Objects.requireNonNull(brineTank, "brineTank");
    }

    private CycleFlows flows() {
        return softener.flows();
    }

    /** A step, unless it is left out. */
    public Optional<CycleStep> step(Kind kind) {
        return cycle.steps().stream().filter(step -> step.kind() == kind).findFirst();
    }

    public double refillLitresPerMinute() {
        return flows().refillOnSiteLitresPerMinute();
    }

    /** Water of the refill, L. */
    public double refillLitres() {
        return step(Kind.REFILL).map(CycleStep::lineWaterLitres).orElse(cycle.brine().saltGrams()
                / CycleDesign.saltGramsPerLitreWater(softener.salt(), celsius));
    }

    /** Salt that the refill dissolves, kg. */
    public double saltKilograms() {
        return CycleDesign.saltGramsOfRefill(softener.salt(), refillLitres(), celsius) / 1000;
    }

    /** Brine that the refill makes, L. */
    public double brineLitres() {
        return saltKilograms() / Brine.saltKilogramsPerLitreBrine(softener.salt(), celsius);
    }

    /** Brine that the injector draws, L/min. */
    public double suctionLitresPerMinute() {
        return cycle.brine().saturatedLitres() / cycle.brine().drawMinutes();
    }

    /** Minutes until the brine of the refill is drawn. */
    public double drawMinutes() {
        return brineLitres() / suctionLitresPerMinute();
    }

    /** What runs to the drain while brine is drawn and rinsed out slowly, L/min. */
    public double brineFlowLitresPerMinute() {
        return cycle.brine().dilutedLitres() / cycle.brine().drawMinutes();
    }

    /**
     * Fall of the level when the brine is drawn, m.
     *
     * <pre>h = V / (1000 ε A)</pre>
     *
     * <p>V brine, L; ε voids; A inner area, m².
     * Validity: salt above the water, that stands.
     * Source: by geometry.
     * Deviation: salt that slumps makes it up to a sixth more, which the band allows for.
     */
    public double levelFallMetres(BrineTank tank) {
        return brineLitres() / tank.shape().litres(tank.widthMetres(), 0, tank.voidShare(), 1, 1);
    }

    /**
     * Chloride above that of raw water in the last water of the rinse, mg/L.
     *
     * <pre>0 where V ≥ V_F + ε V_R,  else c_d</pre>
     *
     * <p>c_d chloride of the diluted brine; V slow and fast rinse, L; V_F room above the resin, L; ε V_R voids of the resin, L.
     * Validity: water above brine displaces it without mixing, as it is lighter.
     * Source: [OWN-ASSUMPTION]; the balance is by definition.
     * Deviation: what mixes is left to the band.
     */
    public double rinseChlorideMgPerL() {
        ResinBed bed = softener.bed();
        if (rinseLitres() >= roomLitres() + bed.bead().voidShare() * bed.resinLitres()) {
            return 0;
        }
        double share = cycle.brine().dilutedSaltShare();
        return share * Brine.weakDensityKilogramsPerCubicMetre(softener.salt(), share) * 1000
                * AtomicWeights.CHLORINE / softener.salt().molarMassGramsPerMole();
    }

    /**
     * Further rinse until what is left of the brine is at a limit, L.
     *
     * <pre>V = V_F ln(c / c_l)</pre>
     *
     * <p>V_F room above the resin, L; c what was read, c_l limit, both above raw water, in one unit.
     * Validity: c above c_l; what is left has mixed with all the water above the resin.
     * Source: [OWN-ASSUMPTION].
     * Deviation: none.
     */
    public double moreRinseLitres(double read, double limit) {
        return roomLitres() * StrictMath.log(read / Guard.positive(limit, "limit"));
    }

    private double roomLitres() {
        return Math.max(0, 1000 * softener.bed().areaSquareMetres() * softener.tankHeightMetres() - softener.bed().resinLitres());
    }

    /** Water of both rinses, L. */
    public double rinseLitres() {
        double slow = step(Kind.BRINE_AND_SLOW_RINSE).map(step -> Math.max(0, step.minutes() - drawMinutes())).orElse(0.0)
                * brineFlowLitresPerMinute();
        return slow + step(Kind.FAST_RINSE).map(CycleStep::drainLitres).orElse(0.0);
    }

    /**
     * Conductivity that chloride of the salt adds, µS/cm at 25 °C per mg/L.
     *
     * <pre>κ = (λ_Cl + λ_cation) / M_Cl</pre>
     *
     * <p>λ µS/cm per meq/L in infinite dilution; M g/mol.
     * Validity: little salt, in which the sum is some per cent too high.
     * Source: [SM2510].
     * Deviation: none.
     */
    public double conductivityPerChloride() {
        Ion cation = softener.salt() == Salt.SODIUM_CHLORIDE ? Ion.SODIUM : Ion.POTASSIUM;
        return (Ion.CHLORIDE.conductivityPerMeq() + cation.conductivityPerMeq()) / Ion.CHLORIDE.mgPerMeq();
    }

    /** Hardness that leaves a bed with the salt set, mg/L as CaCO₃; 0 where the capacity is of a table, which has none. */
    public double leakageMgPerL() {
        double dose = 1000 * saltKilograms() / softener.bed().resinLitres();
        double counted = Math.max(CapacityTable.minSaltDoseGramsPerLitre(softener.salt()),
                Math.min(CapacityTable.maxSaltDoseGramsPerLitre(softener.salt()), dose));
        return softener.capacity().cycle(softener.salt(), counted).map(ColumnResult.Settled::startLeakageMgPerL).orElse(0.0);
    }

    /** The flow at which the loss of pressure is read, L/min. */
    public double testLitresPerMinute() {
        return softener.bed().flowLitresPerMinute(TEST_METRES_PER_HOUR);
    }

    /** Pressure that the clean bed loses at that flow, kPa. */
    public double bedLossKilopascals() {
        return PressureDrop.pascals(softener.bed(), testLitresPerMinute(), celsius) / 1000;
    }

    /** Whether the flows that a check rests on are those of the valve, and not assumed. */
    public boolean isKnown(CommissioningCheck check) {
        return switch (check) {
            case BACKWASH_FLOW -> flows().drainLitresPerMinute().isPresent();
            case FAST_RINSE_FLOW -> flows().drainLitresPerMinute().isPresent() || flows().fastRinseLitresPerMinute().isPresent();
            case REFILL_FLOW, REFILL_WATER, BRINE_LEVEL_FALL -> flows().refillLitresPerMinute().isPresent();
            case DRAW_MINUTES -> flows().brineSuctionLitresPerMinute().isPresent() && flows().refillLitresPerMinute().isPresent();
            case SLOW_RINSE_FLOW -> flows().brineLitresPerMinute().isPresent();
            default -> true;
        };
    }
}
