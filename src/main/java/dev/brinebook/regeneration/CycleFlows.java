package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import java.util.OptionalDouble;

/**
 * Flows that the hardware of a valve fixes, where they are known; an empty one is worked out by {@link CycleDesign}.
 *
 * @param drainLitresPerMinute drain line flow control, which sets the backwash
 * @param brineSuctionLitresPerMinute saturated brine that the injector draws from the tank, below what it sends through
 *     the bed
 * @param brineLitresPerMinute what the injector sends through the bed while it draws brine, and in the slow rinse
 * @param fastRinseLitresPerMinute fast rinse, where it does not run through the same flow control
 * @param refillLitresPerMinute refill of the brine tank
 */
public record CycleFlows(OptionalDouble drainLitresPerMinute, OptionalDouble brineSuctionLitresPerMinute,
        OptionalDouble brineLitresPerMinute, OptionalDouble fastRinseLitresPerMinute,
        OptionalDouble refillLitresPerMinute) {

    public static final double MIN_FLOW_LITRES_PER_MINUTE = 0.1;
    public static final double MAX_FLOW_LITRES_PER_MINUTE = 1000;

    /** Nothing known of the valve. */
    public static final CycleFlows UNKNOWN = new CycleFlows(OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.empty(), OptionalDouble.empty());

    public CycleFlows {
        check(drainLitresPerMinute, "drainLitresPerMinute");
        check(brineSuctionLitresPerMinute, "brineSuctionLitresPerMinute");
        check(brineLitresPerMinute, "brineLitresPerMinute");
        if (brineSuctionLitresPerMinute.isPresent() && brineLitresPerMinute.isPresent()) {
            Injector.suctionShare(brineSuctionLitresPerMinute.getAsDouble(), brineLitresPerMinute.getAsDouble());
        }
        check(fastRinseLitresPerMinute, "fastRinseLitresPerMinute");
        check(refillLitresPerMinute, "refillLitresPerMinute");
    }

    /** A valve whose suction of brine is not known. */
    public CycleFlows(OptionalDouble drainLitresPerMinute, OptionalDouble brineLitresPerMinute,
            OptionalDouble fastRinseLitresPerMinute, OptionalDouble refillLitresPerMinute) {
        this(drainLitresPerMinute, OptionalDouble.empty(), brineLitresPerMinute, fastRinseLitresPerMinute,
                refillLitresPerMinute);
    }

    /** The same valve with another drain line flow control, or with one that is still to be chosen. */
    public CycleFlows withDrain(OptionalDouble otherLitresPerMinute) {
        return new CycleFlows(otherLitresPerMinute, brineSuctionLitresPerMinute, brineLitresPerMinute,
                fastRinseLitresPerMinute, refillLitresPerMinute);
    }

    private static void check(OptionalDouble flow, String name) {
        flow.ifPresent(known -> Guard.within(known, MIN_FLOW_LITRES_PER_MINUTE, MAX_FLOW_LITRES_PER_MINUTE, name));
    }
}
