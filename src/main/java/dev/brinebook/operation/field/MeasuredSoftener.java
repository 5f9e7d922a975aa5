// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.api.Checker;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.field.BreakthroughRun;
import dev.brinebook.field.FieldFinding;
import dev.brinebook.field.FieldQuantity;
import dev.brinebook.field.FieldResults;
import dev.brinebook.field.ReadingCode;
import dev.brinebook.field.Witnesses;
import dev.brinebook.measurement.Measured;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.request.field.FieldMeasurementsRequest;
import dev.brinebook.request.field.ResinTankRequest;
import dev.brinebook.request.softener.FlowsRequest;
import dev.brinebook.request.softener.ResinTestRequest;
import dev.brinebook.request.softener.SiteRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.request.softener.SoftenerUncertaintyRequest;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * The parts of a next request, filled with what was measured. What would make a part refused there is left as it was given.
 *
 * @param request the softener; null where neither a reading nor the request knows its resin
 * @param leftOut what has to be said of readings that the next request would refuse
 */
record MeasuredSoftener(SoftenerRequest request, Set<FieldFinding> leftOut) {

    private static final SoftenerRequest UNKNOWN = new SoftenerRequest(null, null, null, null, null, null, null, null, null, null, null,
            null, null, null, null, null, null);

    /** What one reading fills in, and its uncertainty where it has one to send on. */
    private record Step(UnaryOperator<SoftenerRequest> value, UnaryOperator<SoftenerRequest> uncertainty) {

        Step(UnaryOperator<SoftenerRequest> value) {
            this(value, UnaryOperator.identity());
        }
    }

    /** The softener with each reading that it may have, and the uncertainty of those. */
    static MeasuredSoftener of(FieldMeasurementsRequest request, FieldResults results, AnswerUnits units) {
        SoftenerRequest filled = request.softener() == null ? UNKNOWN : request.softener();
        Set<FieldFinding> leftOut = EnumSet.noneOf(FieldFinding.class);
        for (Step step : steps(request, results, units)) {
            SoftenerRequest next = step.value().apply(filled);
            if (!isTaken(next)) {
                if (isTaken(filled) || next.resinVolume() != filled.resinVolume()) {
                    leftOut.add(FieldFinding.NOT_OF_A_SOFTENER);
                }
                continue;
            }
            filled = step.uncertainty().apply(next);
            if (!isTaken(filled)) {
                leftOut.add(FieldFinding.TOO_UNCERTAIN);
                filled = next;
            }
        }
        return new MeasuredSoftener(filled == UNKNOWN ? null : filled, leftOut);
    }

    private static boolean isTaken(SoftenerRequest softener) {
        Violations violations = new Violations();
        Checker.check(softener, violations);
        return violations.isEmpty();
    }

    private static List<Step> steps(FieldMeasurementsRequest request, FieldResults results, AnswerUnits units) {
        List<Step> steps = new ArrayList<>();
        results.bestResin().ifPresent(resin -> steps.add(new Step(old -> with(old, units, resin, null),
                old -> off(old, units.resinVolume(resin.simulated().halfWidth()), off(old).saltPerRegeneration()))));
        if (request.resinTank() != null) {
            steps.add(new Step(old -> withTank(old, request.resinTank(), units)));
        }
        results.salt().flatMap(Witnesses::mean).ifPresent(salt -> steps.add(new Step(old -> withSalt(old, units.mass(salt.value())),
                old -> off(old, off(old).resinVolume(), units.mass(salt.simulated().halfWidth())))));
        results.of(FieldQuantity.DRAIN_FLOW)
                .ifPresent(flow -> steps.add(new Step(old -> withFlows(old, units.flow(flow.value()), null, null))));
        results.of(FieldQuantity.REFILL_FLOW)
                .ifPresent(flow -> steps.add(new Step(old -> withFlows(old, null, units.flow(flow.value()), null))));
        results.of(FieldQuantity.BRINE_DRAW_FLOW)
                .ifPresent(flow -> steps.add(new Step(old -> withFlows(old, null, null, units.flow(flow.value())))));
        results.capacityLeft().ifPresent(left -> steps.add(new Step(old -> with(old, units, null, left))));
        return steps;
    }

    private static SoftenerRequest with(SoftenerRequest old, AnswerUnits units, Measured<ReadingCode> resin, Measured<ReadingCode> left) {
        return new SoftenerRequest(resin == null ? old.resinVolume() : units.resinVolume(resin.value()), old.nameplateCapacity(),
                old.tankDiameter(), old.tankHeight(), old.salt(), old.saltDose(), old.saltPerRegeneration(), old.control(), old.minutes(),
                old.flows(), old.resinAgeYears(), old.yearlyCapacityLossPercent(), left == null ? old.resinTest()
                : new ResinTestRequest(null, Rounding.answer(100 * left.value())), old.brineDirection(), old.brineTankCapacity(),
                old.saltOnHand(), resin == null ? old.uncertainty() : orNull(null, off(old).saltPerRegeneration()));
    }

    private static SoftenerRequest withTank(SoftenerRequest old, ResinTankRequest tank, AnswerUnits units) {
        return new SoftenerRequest(old.resinVolume(), old.nameplateCapacity(), units.length(tank.diameterMetres()),
                units.length(tank.height().inBase()), old.salt(), old.saltDose(), old.saltPerRegeneration(), old.control(), old.minutes(),
                old.flows(), old.resinAgeYears(), old.yearlyCapacityLossPercent(), old.resinTest(), old.brineDirection(),
                old.brineTankCapacity(), old.saltOnHand(), old.uncertainty());
    }

    private static SoftenerRequest withSalt(SoftenerRequest old, MassQuantity salt) {
        return new SoftenerRequest(old.resinVolume(), old.nameplateCapacity(), old.tankDiameter(), old.tankHeight(), old.salt(), null,
                salt, old.control(), old.minutes(), old.flows(), old.resinAgeYears(), old.yearlyCapacityLossPercent(), old.resinTest(),
                old.brineDirection(), old.brineTankCapacity(), old.saltOnHand(), orNull(off(old).resinVolume(), null));
    }

    /** The same with how far volume and salt may be off. */
    private static SoftenerRequest off(SoftenerRequest old, VolumeQuantity resin, MassQuantity salt) {
        return new SoftenerRequest(old.resinVolume(), old.nameplateCapacity(), old.tankDiameter(), old.tankHeight(), old.salt(),
                old.saltDose(), old.saltPerRegeneration(), old.control(), old.minutes(), old.flows(), old.resinAgeYears(),
                old.yearlyCapacityLossPercent(), old.resinTest(), old.brineDirection(), old.brineTankCapacity(), old.saltOnHand(),
                orNull(resin, salt));
    }

    private static SoftenerUncertaintyRequest off(SoftenerRequest softener) {
        return softener.uncertainty() == null ? new SoftenerUncertaintyRequest(null, null) : softener.uncertainty();
    }

    private static SoftenerUncertaintyRequest orNull(VolumeQuantity resin, MassQuantity salt) {
        return resin == null && salt == null ? null : new SoftenerUncertaintyRequest(resin, salt);
    }

    private static SoftenerRequest withFlows(SoftenerRequest old, FlowQuantity drain, FlowQuantity refill, FlowQuantity suction) {
        FlowsRequest flows = old.flows() == null ? new FlowsRequest(null, null, null, null, null, null, null) : old.flows();
        FlowsRequest measured = new FlowsRequest(drain == null ? flows.drain() : drain, flows.brineDraw(),
                suction == null ? flows.brineSuction() : suction, flows.fastRinse(), refill == null ? flows.refill() : refill,
                flows.supply(), flows.drainLine());
        return new SoftenerRequest(old.resinVolume(), old.nameplateCapacity(), old.tankDiameter(), old.tankHeight(), old.salt(),
                old.saltDose(), old.saltPerRegeneration(), old.control(), old.minutes(), measured, old.resinAgeYears(),
                old.yearlyCapacityLossPercent(), old.resinTest(), old.brineDirection(), old.brineTankCapacity(), old.saltOnHand(),
                old.uncertainty());
    }

    /** The site: the resin is in good condition where it has kept its capacity and none is missing. Null where nothing is known. */
    static SiteRequest site(SiteRequest given, FieldResults results, Set<FieldFinding> findings) {
        Optional<Boolean> good = results.capacityLeft().map(left -> left.value() >= BreakthroughRun.WORN_SHARE
                && !findings.contains(FieldFinding.RESIN_MISSING));
        if (good.isEmpty()) {
            return given;
        }
        SiteRequest old = SiteRequest.orUnseen(given);
        return new SiteRequest(old.brineTankAndLine(), old.drain(), old.drainFlow(), old.valveBore(), old.placeForMeter(),
                old.powerWithinReach(), old.surgeProtection(), old.bypass(), good.get(), old.wasteWater(), old.prices());
    }
}
