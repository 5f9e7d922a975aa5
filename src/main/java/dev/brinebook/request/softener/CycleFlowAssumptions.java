// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.regeneration.BackwashFlow;
import dev.brinebook.regeneration.BrineMixing;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.text.Message;
import java.util.function.Function;

/** The flows of a valve that a regeneration is calculated with: those given, and what is taken for the others. */
public final class CycleFlowAssumptions {

    private static final String OWN = "OWN-ASSUMPTION";
    private static final String CYCLE = "CP-CYCLE";

    private CycleFlowAssumptions() {
    }

    /** Records them in {@code explanation}. */
    public static void record(FlowsRequest given, CycleDesign design, Cycle cycle, Explanation explanation) {
        AnswerUnits units = AnswerUnits.of(explanation);
        double drain = cycle.backwashFlow().litresPerMinute();
        assumeFlow("drain", given, FlowsRequest::drain, place -> Resolved.of(place, units.flow(drain)).estimated(CYCLE)
                .noting(Message.of("assumed.regeneration.nextStepLiftsBed",
                        Text.of(units.flow(BackwashFlow.ASSUMED_STEP_LITRES_PER_MINUTE)))), explanation);
        assumeFlow("brineDraw", given, FlowsRequest::brineDraw, place -> brineDraw(place, design, cycle, units), explanation);
        Cycle.BrineDraw brine = cycle.brine();
        assumeFlow("brineSuction", given, FlowsRequest::brineSuction,
                place -> Resolved.of(place, units.flow(brineSuction(design, brine))).estimated(CYCLE)
                        .noting(Message.of("assumed.regeneration.flowMakes10Brine")), explanation);
        assumeFlow("fastRinse", given, FlowsRequest::fastRinse, place -> Resolved.of(place, units.flow(drain)).estimated(CYCLE)
                .noting(Message.of("assumed.regeneration.sameBackwashFlow")), explanation);
        assumeFlow("refill", given, FlowsRequest::refill,
                place -> Resolved.of(place, units.flow(CycleDesign.ASSUMED_REFILL_LITRES_PER_MINUTE)).byDefault(OWN), explanation);
        assumeFlow("supply", given, FlowsRequest::supply, CycleFlowAssumptions::noLimit, explanation);
        assumeFlow("drainLine", given, FlowsRequest::drainLine, CycleFlowAssumptions::noLimit, explanation);
    }

    /** The suction of an injector that nothing slows down, so that it can be sent back together with its flow. */
    private static double brineSuction(CycleDesign design, Cycle.BrineDraw brine) {
        return design.flows().injector().mixing() == BrineMixing.BY_VOLUME ? brine.saturatedLitres() / brine.drawMinutes()
                : design.flows().brineLitresPerMinute().orElse(usualBrineDraw(design)) * brine.saturatedLitres() / brine.dilutedLitres();
    }

    private static double brineFlow(CycleDesign design, Cycle cycle) {
        return design.flows().injector().mixing() == BrineMixing.BY_VOLUME ? cycle.step(Kind.BRINE_AND_SLOW_RINSE).flowLitresPerMinute()
                : design.flows().brineSuctionLitresPerMinute().getAsDouble() * cycle.brine().dilutedLitres()
                        / cycle.brine().saturatedLitres();
    }

    private static double usualBrineDraw(CycleDesign design) {
        return design.bed().flowLitresPerMinuteOfBedVolumes(CycleDesign.ASSUMED_BRINE_BED_VOLUMES_PER_HOUR);
    }

    private static Resolved brineDraw(String place, CycleDesign design, Cycle cycle, AnswerUnits units) {
        return design.flows().brineSuctionLitresPerMinute().isPresent()
                ? Resolved.of(place, units.flow(brineFlow(design, cycle))).estimated(CYCLE)
                        .noting(Message.of("assumed.regeneration.flowDilutesSuction10"))
                : Resolved.of(place, units.flow(usualBrineDraw(design))).estimated(OWN)
                        .noting(Message.of("assumed.regeneration.bedVolumesPerHour",
                                Text.number(CycleDesign.ASSUMED_BRINE_BED_VOLUMES_PER_HOUR)));
    }

    private static Resolved noLimit(String place) {
        return Resolved.inWords(place, Message.of("assumed.common.unknownTakenNoLimit")).byDefault(CYCLE);
    }

    private static void assumeFlow(String name, FlowsRequest flows, Function<FlowsRequest, FlowQuantity> flow,
            Function<String, Resolved> otherwise, Explanation explanation) {
        String place = "/softener/flows/" + name;
        FlowQuantity given = flows == null ? null : flow.apply(flows);
        explanation.assume(given == null ? otherwise.apply(place) : Resolved.of(place, given));
    }
}
