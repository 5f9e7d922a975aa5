package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.Exact;
import java.util.Comparator;
import java.util.List;

/**
 * The most water that a bed softens at a time: what the guides and the pressure allow, and which of them binds.
 *
 * <p>Not the limit of valve and pipes, which may bind first.
 */
public final class ServiceFlow {

    private static final double METRES_PER_HOUR_OF_GPM_PER_SQUARE_FOOT =
            Exact.US_GALLON_LITRES * 0.06 / (144 * Exact.INCH_METRES * Exact.INCH_METRES);
    private static final double BED_VOLUMES_PER_HOUR_OF_GPM_PER_CUBIC_FOOT =
            60 * Exact.US_GALLON_LITRES / Exact.CUBIC_FOOT_LITRES;

    /** Low end of the velocity guide by [LIN]: 6 gpm/ft² of tank. */
    public static final double GUIDE_LOW_VELOCITY_METRES_PER_HOUR = 6 * METRES_PER_HOUR_OF_GPM_PER_SQUARE_FOOT;
    /** High end of the velocity guide by [LIN]: 8 gpm/ft² of tank. */
    public static final double GUIDE_HIGH_VELOCITY_METRES_PER_HOUR = 8 * METRES_PER_HOUR_OF_GPM_PER_SQUARE_FOOT;
    /** Low end of the flow per resin by [DAVIS] table 8-2: 1 gpm/ft³; slower water finds channels. */
    public static final double GUIDE_LOW_BED_VOLUMES_PER_HOUR = BED_VOLUMES_PER_HOUR_OF_GPM_PER_CUBIC_FOOT;
    /** High end of the flow per resin by [DAVIS] table 8-2: 5 gpm/ft³. */
    public static final double GUIDE_HIGH_BED_VOLUMES_PER_HOUR = 5 * BED_VOLUMES_PER_HOUR_OF_GPM_PER_CUBIC_FOOT;
    /** Short peaks by [CP-HYDRAULICS]: 10 gpm/ft³. */
    public static final double GUIDE_PEAK_BED_VOLUMES_PER_HOUR = 10 * BED_VOLUMES_PER_HOUR_OF_GPM_PER_CUBIC_FOOT;
    /** Pressure drop of a household softener by [CP-HYDRAULICS]: 15 psi. */
    public static final double GUIDE_PRESSURE_DROP_PASCALS = 15 * Exact.PSI_PASCALS;
    /** Highest pressure drop of any softener by [DAVIS] table 8-3: 20 psi. */
    public static final double GUIDE_MAX_PRESSURE_DROP_PASCALS = 20 * Exact.PSI_PASCALS;

    /** What limits a service flow. */
    public enum Limit {
        /** Velocity over the cross-section of the tank, 8 gpm/ft². */
        SURFACE_VELOCITY,
        /** Flow per volume of resin, 5 gpm/ft³ all day. */
        FLOW_PER_RESIN,
        /** Flow per volume of resin in short peaks, 10 gpm/ft³. */
        PEAK_FLOW_PER_RESIN,
        /** Pressure lost in the bed, 15 psi. */
        PRESSURE_DROP
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
                new Bound(Limit.FLOW_PER_RESIN, GUIDE_HIGH_BED_VOLUMES_PER_HOUR * bed.resinLitres() / 60),
                pressureBound(bed, crushedShare, temperatureCelsius));
    }

    /** The limits of short peaks with water of {@code temperatureCelsius}, the one that binds first. */
    public static List<Bound> peakBounds(ResinBed bed, double temperatureCelsius) {
        return peakBounds(bed, 0, temperatureCelsius);
    }

    /** The same of a bed in which {@code crushedShare} of the beads is crushed. */
    public static List<Bound> peakBounds(ResinBed bed, double crushedShare, double temperatureCelsius) {
        return bindingFirst(
                new Bound(Limit.PEAK_FLOW_PER_RESIN, GUIDE_PEAK_BED_VOLUMES_PER_HOUR * bed.resinLitres() / 60),
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
