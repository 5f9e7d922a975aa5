// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.regeneration.CycleFlows;
import java.util.OptionalDouble;

/**
 * Requirements on a bed, as far as known.
 *
 * @param targetExpansionShare wanted expansion in backwash, as a share of its depth
 * @param flows drain line flow control, drain and supply, as far as known
 * @param serviceLitresPerMinute continuous flow
 * @param peakLitresPerMinute peak flow
 */
public record BedDuty(double targetExpansionShare, CycleFlows flows, OptionalDouble serviceLitresPerMinute,
        OptionalDouble peakLitresPerMinute) {

    public static final double MIN_TARGET_EXPANSION_SHARE = 0.1;
    public static final double MAX_TARGET_EXPANSION_SHARE = 1;

    public BedDuty {
        Guard.within(targetExpansionShare, MIN_TARGET_EXPANSION_SHARE, MAX_TARGET_EXPANSION_SHARE, "targetExpansionShare");
        check(serviceLitresPerMinute, "serviceLitresPerMinute");
        check(peakLitresPerMinute, "peakLitresPerMinute");
    }

    private static void check(OptionalDouble flow, String name) {
        flow.ifPresent(known -> Guard.within(known, CycleFlows.MIN_FLOW_LITRES_PER_MINUTE,
                CycleFlows.MAX_FLOW_LITRES_PER_MINUTE, name));
    }
}
