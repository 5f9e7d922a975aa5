// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.BedFlowUnit;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.SurfaceFlowUnit;
import dev.brinebook.text.Localizable;
import java.util.Comparator;
import java.util.List;

/**
 * The most water that a bed softens at a time: what the guides and the pressure allow, and which of them binds.
 *
 * <p>Not the limit of valve and pipes, which may bind first.
 */
public final class ServiceFlow {

    /** Low end of the velocity guide by [LIN]: 6 gpm/ft² of tank. */
    public static final double GUIDE_LOW_VELOCITY_METRES_PER_HOUR = SurfaceFlowUnit.GPM_PER_SQUARE_FOOT.toBase(6);
    /** High end of the velocity guide by [LIN]: 8 gpm/ft² of tank. */
    public static final double GUIDE_HIGH_VELOCITY_METRES_PER_HOUR = SurfaceFlowUnit.GPM_PER_SQUARE_FOOT.toBase(8);
    /** Low end of the flow per resin by [DAVIS] table 8-2: 1 gpm/ft³; slower water finds channels. */
    public static final double GUIDE_LOW_BED_VOLUMES_PER_HOUR = BedFlowUnit.GPM_PER_CUBIC_FOOT.toBase(1);
    /** High end of the flow per resin by [DAVIS] table 8-2: 5 gpm/ft³. */
    public static final double GUIDE_HIGH_BED_VOLUMES_PER_HOUR = BedFlowUnit.GPM_PER_CUBIC_FOOT.toBase(5);
    /** Short peaks by [CP-HYDRAULICS]: 10 gpm/ft³. */
    public static final double GUIDE_PEAK_BED_VOLUMES_PER_HOUR = BedFlowUnit.GPM_PER_CUBIC_FOOT.toBase(10);
    /** Pressure drop of a household softener by [NSF-ANSI-44]: 15 psi. */
    public static final double GUIDE_PRESSURE_DROP_PASCALS = 15 * Exact.PSI_PASCALS;
    /** Highest pressure drop of any softener by [DAVIS] table 8-3: 20 psi. */
    public static final double GUIDE_MAX_PRESSURE_DROP_PASCALS = 20 * Exact.PSI_PASCALS;

    /** What limits a service flow, with its name in a sentence. */
    public enum Limit implements Localizable {
        /** Velocity over the cross-section of the tank, 8 gpm/ft². */
        SURFACE_VELOCITY,
        /** Flow per volume of resin, 5 gpm/ft³ all day. */
        FLOW_PER_RESIN,
        /** Flow per volume of resin in short peaks, 10 gpm/ft³. */
        PEAK_FLOW_PER_RESIN,
        /** Pressure lost in the bed, 15 psi. */
        PRESSURE_DROP;

        /** Whether the diameter of the tank sets it, not the volume of resin alone. */
        public boolean isOfDiameter() {
            return this == SURFACE_VELOCITY || this == PRESSURE_DROP;
        }

        @Override
        public String textId() {
            return Localizable.idOf("flowLimit", this);
        }
    }

    /** A flow and what it is the limit of. */
    public record Bound(Limit limit, double flowLitresPerMinute) {

        public Bound {
            Guard.positive(flowLitresPerMinute, "flowLitresPerMinute");
        }
    }

    private ServiceFlow() {
    }

    /** The limits of lasting service with water of {@code temperatureCelsius}, the one that binds first. */
    public static List<Bound> continuousBounds(ResinBed bed, double temperatureCelsius) {
        return continuousBounds(bed, 0, temperatureCelsius);
    }

    /** The same of a bed in which {@code crushedShare} of the beads is crushed. */
    public static List<Bound> continuousBounds(ResinBed bed, double crushedShare, double temperatureCelsius) {
        return bindingFirst(
                new Bound(Limit.SURFACE_VELOCITY, bed.flowLitresPerMinute(GUIDE_HIGH_VELOCITY_METRES_PER_HOUR)),
                new Bound(Limit.FLOW_PER_RESIN, bed.flowLitresPerMinuteOfBedVolumes(GUIDE_HIGH_BED_VOLUMES_PER_HOUR)),
                pressureBound(bed, crushedShare, temperatureCelsius));
    }

    /** The limits of short peaks with water of {@code temperatureCelsius}, the one that binds first. */
    public static List<Bound> peakBounds(ResinBed bed, double temperatureCelsius) {
        return peakBounds(bed, 0, temperatureCelsius);
    }

    /** The same of a bed in which {@code crushedShare} of the beads is crushed. */
    public static List<Bound> peakBounds(ResinBed bed, double crushedShare, double temperatureCelsius) {
        return bindingFirst(
                new Bound(Limit.PEAK_FLOW_PER_RESIN, bed.flowLitresPerMinuteOfBedVolumes(GUIDE_PEAK_BED_VOLUMES_PER_HOUR)),
                pressureBound(bed, crushedShare, temperatureCelsius));
    }

    private static Bound pressureBound(ResinBed bed, double crushedShare, double temperatureCelsius) {
        return new Bound(Limit.PRESSURE_DROP,
                PressureDrop.flowLitresPerMinute(bed, crushedShare, GUIDE_PRESSURE_DROP_PASCALS, temperatureCelsius));
    }

    private static List<Bound> bindingFirst(Bound... bounds) {
        return List.of(bounds).stream().sorted(Comparator.comparingDouble(Bound::flowLitresPerMinute)).toList();
    }
}
