// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Flows that the hardware of a valve fixes, where they are known; an empty one is calculated by {@link CycleDesign}.
 *
 * @param drainLitresPerMinute drain line flow control
 * @param injector the flows of the injector
 * @param fastRinseLitresPerMinute fast rinse, where it does not run through the same flow control
 * @param refillLitresPerMinute refill of the brine tank
 * @param drainLineLitresPerMinute the most that the drain takes
 * @param supplyLitresPerMinute the most that the supply gives
 */
public record CycleFlows(OptionalDouble drainLitresPerMinute, InjectorFlows injector, OptionalDouble fastRinseLitresPerMinute,
        OptionalDouble refillLitresPerMinute, OptionalDouble drainLineLitresPerMinute,
        OptionalDouble supplyLitresPerMinute) {

    public static final double MIN_FLOW_LITRES_PER_MINUTE = 0.1;
    public static final double MAX_FLOW_LITRES_PER_MINUTE = 1000;

    /** Nothing known of the valve. */
    public static final CycleFlows UNKNOWN = new CycleFlows(OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.empty(), OptionalDouble.empty());

    public CycleFlows {
        check(drainLitresPerMinute, "drainLitresPerMinute");
        Objects.requireNonNull(injector, "injector");
        check(fastRinseLitresPerMinute, "fastRinseLitresPerMinute");
        check(refillLitresPerMinute, "refillLitresPerMinute");
        check(drainLineLitresPerMinute, "drainLineLitresPerMinute");
        check(supplyLitresPerMinute, "supplyLitresPerMinute");
    }

    /** A valve on a site that is not known. */
    public CycleFlows(OptionalDouble drainLitresPerMinute, OptionalDouble brineSuctionLitresPerMinute,
            OptionalDouble brineLitresPerMinute, OptionalDouble fastRinseLitresPerMinute,
            OptionalDouble refillLitresPerMinute) {
        this(drainLitresPerMinute, new InjectorFlows(brineSuctionLitresPerMinute, brineLitresPerMinute, BrineMixing.BY_WEIGHT),
                fastRinseLitresPerMinute, refillLitresPerMinute, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** A valve whose suction of brine is not known, on a site that is not known. */
    public CycleFlows(OptionalDouble drainLitresPerMinute, OptionalDouble brineLitresPerMinute,
            OptionalDouble fastRinseLitresPerMinute, OptionalDouble refillLitresPerMinute) {
        this(drainLitresPerMinute, OptionalDouble.empty(), brineLitresPerMinute, fastRinseLitresPerMinute,
                refillLitresPerMinute);
    }

    /** Saturated brine that the injector draws, if known. */
    public OptionalDouble brineSuctionLitresPerMinute() {
        return injector.suctionLitresPerMinute();
    }

    /** What the injector sends through the bed, if known. */
    public OptionalDouble brineLitresPerMinute() {
        return injector.brineLitresPerMinute();
    }

    /** The same valve with another drain line flow control, or with one that is still to be chosen. */
    public CycleFlows withDrain(OptionalDouble otherLitresPerMinute) {
        return new CycleFlows(otherLitresPerMinute, injector, fastRinseLitresPerMinute, refillLitresPerMinute,
                drainLineLitresPerMinute, supplyLitresPerMinute);
    }

    /** The same valve on a site with these drain and supply flows, as far as known. */
    public CycleFlows onSite(OptionalDouble drainLine, OptionalDouble supply) {
        return new CycleFlows(drainLitresPerMinute, injector, fastRinseLitresPerMinute, refillLitresPerMinute, drainLine, supply);
    }

    /** Another valve, of which nothing is known, on the same site. */
    public CycleFlows ofSiteOnly() {
        return UNKNOWN.onSite(drainLineLitresPerMinute, supplyLitresPerMinute);
    }

    /** The most that can pass the bed to the drain, infinite where neither drain nor supply is known. */
    public double mostLitresPerMinute() {
        return Math.min(drainLineLitresPerMinute.orElse(Double.POSITIVE_INFINITY),
                supplyLitresPerMinute.orElse(Double.POSITIVE_INFINITY));
    }

    /** What a backwash gets on this site, for a bed that wants {@code targetLitresPerMinute}. */
    public BackwashFlow backwash(double targetLitresPerMinute) {
        return BackwashFlow.of(targetLitresPerMinute, this);
    }

    /** What fills the brine tank on this site: the flow that is known, else the usual one, or what the supply gives. */
    public double refillOnSiteLitresPerMinute() {
        return Math.min(refillLitresPerMinute.orElse(CycleDesign.ASSUMED_REFILL_LITRES_PER_MINUTE),
                supplyLitresPerMinute.orElse(Double.POSITIVE_INFINITY));
    }

    private static void check(OptionalDouble flow, String name) {
        flow.ifPresent(known -> Guard.within(known, MIN_FLOW_LITRES_PER_MINUTE, MAX_FLOW_LITRES_PER_MINUTE, name));
    }
}
