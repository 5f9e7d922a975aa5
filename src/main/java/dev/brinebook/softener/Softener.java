// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A softener without its controller: the bed in its tank, and how it is regenerated.
 *
 * @param bed the resin in its tank
 * @param tankHeightMetres inside height of the tank
 * @param salt the salt it is regenerated with
 * @param capacity what its resin takes up by salt dose
 * @param flows the flows that its hardware fixes, as far as known
 */
public record Softener(ResinBed bed, double tankHeightMetres, Salt salt, CapacityModel capacity, CycleFlows flows) {

    /** Largest household bed: the largest standard tank, doubled. */
    public static final double MAX_RESIN_LITRES = 600;
    /** Wider than any household tank. */
    public static final double MAX_TANK_DIAMETER_METRES = 1;
    public static final double MAX_TANK_HEIGHT_METRES = 3;
    public static final double MIN_TANK_HEIGHT_METRES = 0.2;

    public Softener {
        Objects.requireNonNull(salt, "salt");
        Objects.requireNonNull(capacity, "capacity");
        Objects.requireNonNull(flows, "flows");
        Guard.within(tankHeightMetres, bed.depthMetres(), MAX_TANK_HEIGHT_METRES, "tankHeightMetres");
    }

    /** The same softener with another drain line flow control, or with one that is still to be chosen. */
    public Softener withDrain(OptionalDouble otherLitresPerMinute) {
        return with(flows.withDrain(otherLitresPerMinute));
    }

    /** The same softener where the drain takes no more than a flow, if that is known. */
    public Softener onDrain(OptionalDouble drainLineLitresPerMinute) {
        double least = Math.min(drainLineLitresPerMinute.orElse(Double.POSITIVE_INFINITY),
                flows.drainLineLitresPerMinute().orElse(Double.POSITIVE_INFINITY));
        return Double.isInfinite(least) ? this : with(flows.onSite(OptionalDouble.of(least), flows.supplyLitresPerMinute()));
    }

    /** The same softener where nothing limits what the drain takes. */
    public Softener onAnyDrain() {
        return with(flows.onSite(OptionalDouble.empty(), flows.supplyLitresPerMinute()));
    }

    /** The same tank with another volume of the same resin. */
    public Softener withResin(double otherLitres) {
        return new Softener(new ResinBed(otherLitres, bed.tankDiameterMetres(), bed.bead()), tankHeightMetres, salt, capacity, flows);
    }

    /** This softener in the place of another: drain and supply take and give what they do there. */
    public Softener inPlaceOf(Softener other) {
        return with(flows.onSite(other.flows.drainLineLitresPerMinute(), other.flows.supplyLitresPerMinute()));
    }

    private Softener with(CycleFlows other) {
        return new Softener(bed, tankHeightMetres, salt, capacity, other);
    }

    /** Capacity that a dose restores, grams as CaCO3 of the whole bed. */
    public double capacityGrams(double saltDoseGramsPerLitre) {
        return bed.resinLitres() * capacity.capacityGramsPerLitre(salt, saltDoseGramsPerLitre);
    }

    /** Whether the softened water keeps below the end point of hardness at a dose. */
    public boolean holdsEndPoint(double saltDoseGramsPerLitre) {
        return capacity.holdsEndPoint(salt, saltDoseGramsPerLitre);
    }

    /** Salt of one regeneration at a dose, grams. */
    public double saltGrams(double saltDoseGramsPerLitre) {
        return bed.resinLitres() * saltDoseGramsPerLitre;
    }

    /** The regeneration cycle at a dose, in water and brine tank of {@code temperatureCelsius}. */
    public CycleDesign cycleDesign(double saltDoseGramsPerLitre, double temperatureCelsius) {
        return cycleDesign(saltDoseGramsPerLitre, temperatureCelsius, temperatureCelsius, false);
    }

    /** The regeneration cycle at a dose, with a brine tank that may be warmer or colder than the water. */
    public CycleDesign cycleDesign(double saltDoseGramsPerLitre, double waterTemperatureCelsius,
            double brineTankTemperatureCelsius, boolean secondBackwash) {
        return new CycleDesign(bed, salt, saltGrams(saltDoseGramsPerLitre), waterTemperatureCelsius,
                brineTankTemperatureCelsius, flows, secondBackwash);
    }
}
