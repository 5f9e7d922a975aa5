// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.Exact;
import java.util.OptionalDouble;

/**
 * The flow that a backwash gets on its site: the least of what the drain line flow control lets through, what the drain takes
 * and what the supply gives.
 *
 * @param litresPerMinute the flow
 * @param rule which of the three it is
 * @param toRaise which of the three must be larger before the flow can be: a flow control as large as drain or supply allow
 *     cannot be replaced by a larger one
 */
public record BackwashFlow(double litresPerMinute, BackwashRule rule, BackwashRule toRaise) {

    /** Drain line flow controls come in steps of half a US gallon per minute. */
    public static final double ASSUMED_STEP_LITRES_PER_MINUTE = Exact.US_GALLON_LITRES / 2;
    /** A flow that is a step but for rounding is that step. */
    private static final double ROUNDING_SHARE = 1e-6;

    public BackwashFlow {
        Guard.positive(litresPerMinute, "litresPerMinute");
    }

    /**
     * The flow of a bed that wants {@code targetLitresPerMinute}. A flow control that is still to be chosen is the next step at or
     * above the target, or where drain or supply are less, the largest step within them.
     *
     * <pre>Q = min(Qc, Qd, Qs)</pre>
     *
     * <p>Q flow; Qc flow control; Qd drain; Qs supply, L/min; one that is not known limits nothing.
     * Source: [CP-CYCLE]; the same water passes all three.
     */
    static BackwashFlow of(double targetLitresPerMinute, CycleFlows flows) {
        BackwashFlow chosen = chosen(targetLitresPerMinute, flows);
        if (flows.drainLitresPerMinute().isEmpty()) {
            return chosen;
        }
        double control = flows.drainLitresPerMinute().getAsDouble();
        double most = flows.mostLitresPerMinute();
        if (control > most * (1 + ROUNDING_SHARE)) {
            return new BackwashFlow(most, ofSite(flows), ofSite(flows));
        }
        return new BackwashFlow(Math.min(control, most), BackwashRule.FLOW_CONTROL,
                chosen.litresPerMinute() > control * (1 + ROUNDING_SHARE) ? BackwashRule.FLOW_CONTROL : chosen.toRaise());
    }

    private static BackwashFlow chosen(double targetLitresPerMinute, CycleFlows flows) {
        double most = flows.mostLitresPerMinute();
        double wanted = stepAtOrAbove(targetLitresPerMinute);
        if (wanted <= most * (1 + ROUNDING_SHARE)) {
            return new BackwashFlow(Math.min(wanted, most), BackwashRule.FLOW_CONTROL, BackwashRule.FLOW_CONTROL);
        }
        double within = ASSUMED_STEP_LITRES_PER_MINUTE * Math.floor(most / ASSUMED_STEP_LITRES_PER_MINUTE * (1 + ROUNDING_SHARE));
        return new BackwashFlow(within > 0 ? Math.min(within, most) : most, ofSite(flows), ofSite(flows));
    }

    private static BackwashRule ofSite(CycleFlows flows) {
        OptionalDouble drain = flows.drainLineLitresPerMinute();
        return drain.isPresent() && drain.getAsDouble() <= flows.mostLitresPerMinute() ? BackwashRule.DRAIN : BackwashRule.SUPPLY;
    }

    /** The first drain line flow control at or above {@code flowLitresPerMinute}. */
    static double stepAtOrAbove(double flowLitresPerMinute) {
        return ASSUMED_STEP_LITRES_PER_MINUTE
                * Math.ceil(Guard.positive(flowLitresPerMinute, "flowLitresPerMinute") / ASSUMED_STEP_LITRES_PER_MINUTE);
    }
}
