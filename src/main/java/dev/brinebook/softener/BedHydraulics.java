// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.regeneration.BackwashFlow;
import dev.brinebook.resin.Backwash;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.resin.Packing;
import dev.brinebook.resin.PressureDrop;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.ServiceFlow;
import dev.brinebook.water.WaterProperties;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A bed in its tank, in water of a temperature, as it is when clean and as it is when some of its beads are crushed.
 *
 * @param bed the resin in its tank
 * @param tankHeightMetres inside height of the tank
 * @param temperatureCelsius temperature of the water
 * @param crushedShare share of the beads, by volume, that is treated as crushed
 */
public record BedHydraulics(ResinBed bed, double tankHeightMetres, double temperatureCelsius, double crushedShare) {

    public BedHydraulics {
        Guard.within(tankHeightMetres, bed.depthMetres(), Softener.MAX_TANK_HEIGHT_METRES, "tankHeightMetres");
        Guard.within(temperatureCelsius, WaterProperties.MIN_TEMPERATURE_CELSIUS, WaterProperties.MAX_TEMPERATURE_CELSIUS,
                "temperatureCelsius");
        Guard.within(crushedShare, 0, Packing.MAX_CRUSHED_SHARE, "crushedShare");
    }

    public double cleanDropPascals(double flowLitresPerMinute) {
        return PressureDrop.pascals(bed, flowLitresPerMinute, temperatureCelsius);
    }

    public double crushedDropPascals(double flowLitresPerMinute) {
        return PressureDrop.pascals(bed, crushedShare, flowLitresPerMinute, temperatureCelsius);
    }

    /** What the clean bed takes all day, the limit that binds first. */
    public List<ServiceFlow.Bound> cleanContinuousBounds() {
        return ServiceFlow.continuousBounds(bed, temperatureCelsius);
    }

    public List<ServiceFlow.Bound> crushedContinuousBounds() {
        return ServiceFlow.continuousBounds(bed, crushedShare, temperatureCelsius);
    }

    /** What the clean bed takes in short peaks, the limit that binds first. */
    public List<ServiceFlow.Bound> cleanPeakBounds() {
        return ServiceFlow.peakBounds(bed, temperatureCelsius);
    }

    public List<ServiceFlow.Bound> crushedPeakBounds() {
        return ServiceFlow.peakBounds(bed, crushedShare, temperatureCelsius);
    }

    /** The upflow that lifts the bed by a share of its depth. */
    public double backwashLitresPerMinute(double expansionShare) {
        return bed.flowLitresPerMinute(Backwash.velocityMetresPerHour(bed.bead(), expansionShare, temperatureCelsius));
    }

    /** What a backwash gets on its site, with the flow control that is fitted or else the one to choose for the expansion. */
    public BackwashFlow backwashFlow(BedDuty duty) {
        return duty.flows().backwash(backwashLitresPerMinute(duty.targetExpansionShare()));
    }

    /** The same with the flow control to choose, whatever is fitted. */
    public BackwashFlow chosenFlow(BedDuty duty) {
        return duty.flows().withDrain(OptionalDouble.empty()).backwash(backwashLitresPerMinute(duty.targetExpansionShare()));
    }

    /** What an upflow does to the bed. */
    public BackwashEffect backwash(double flowLitresPerMinute) {
        return BackwashEffect.of(bed, tankHeightMetres, flowLitresPerMinute, temperatureCelsius);
    }

    /** Whether the tank takes the bed when it is lifted by a share of its depth. */
    public boolean hasRoomFor(double expansionShare) {
        return bed.freeboardShare(tankHeightMetres) >= expansionShare;
    }
}
