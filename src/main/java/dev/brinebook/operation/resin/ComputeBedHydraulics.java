// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.answer.cycle.CycleBed;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.model.Model;
import dev.brinebook.regeneration.BackwashFlow;
import dev.brinebook.request.softener.FlowsRequest;
import dev.brinebook.request.softener.ResolvedSoftener;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.resin.Packing;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.softener.BedDuty;
import dev.brinebook.softener.BedFinding;
import dev.brinebook.softener.BedHydraulics;
import dev.brinebook.text.Message;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import java.util.List;
import java.util.stream.Stream;

/** What water does in a bed. */
public final class ComputeBedHydraulics {

    public static final Operation<BedHydraulicsRequest, BedHydraulicsAnswer> OPERATION = new Operation<>(
            "computeBedHydraulics", "/v1/bed-hydraulics", "Calculate pressure drop, flow limits and backwash of a bed",
            "Choose this for questions of flow or pressure: the pressure drop of a bed at a flow, clean and with crushed beads; its "
                    + "maximum continuous and peak flow, and the limit that sets them; the contact time; and the drain line flow "
                    + "control that lifts the bed enough in this water and keeps the resin in the tank. For the minutes of a "
                    + "regeneration use designCycle. To choose a softener use sizeSoftener.",
            BedHydraulicsRequest.class, BedHydraulicsAnswer.class, ComputeBedHydraulics::answer, List.of(),
            List.of("well-family", "apartment"));

    private static final String OWN = "OWN-ASSUMPTION";

    private ComputeBedHydraulics() {
    }

    private static BedHydraulicsAnswer answer(BedHydraulicsRequest request, Model model) {
        AnswerUnits units = HomeCountry.units(request.units(), request.country());
        Explanation explanation = units.explanation();
        explanation.caution(HomeCountry.airGap(HomeCountry.of(request.country(), explanation)));
        BedHydraulics hydraulics = hydraulics(request, units, model, explanation);
        BedDuty duty = duty(request, model, explanation);
        assumeFlows(request, hydraulics.chosenFlow(duty), units, explanation);
        BedLimit lasting = BedLimit.of(hydraulics.cleanContinuousBounds(), hydraulics.crushedContinuousBounds(), units);
        BedLimit peaks = BedLimit.of(hydraulics.cleanPeakBounds(), hydraulics.crushedPeakBounds(), units);
        BedBackwash backwash = BedBackwash.of(hydraulics, duty, units);
        BackwashFlow flow = hydraulics.backwashFlow(duty);
        CycleBed bed = CycleBed.of(hydraulics.bed(), hydraulics.backwash(flow.litresPerMinute()), units);
        explain(hydraulics, units, explanation);
        List<BedFindingLine> findings = BedFinding.of(hydraulics, duty).stream()
                .map(finding -> BedFindingLine.of(finding, flow, units)).toList();
        Message summary = Message.sentences(Stream.concat(Stream.of(summary(hydraulics, lasting, peaks, units),
                backwashSentence(backwash)), findings.stream().map(BedFindingLine::message)).toList());
        return new BedHydraulicsAnswer(summary, bed,
                BedBeads.of(hydraulics.bed().bead(), hydraulics.crushedShare()),
                BedWater.of(hydraulics.temperatureCelsius(), units), BedFlowLine.all(hydraulics, duty, units), lasting, peaks,
                backwash, findings, explanation.cautions(),
                explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static BedHydraulics hydraulics(BedHydraulicsRequest request, AnswerUnits units, Model model, Explanation explanation) {
        ResolvedSoftener softener = request.softener().resolved(model);
        ResinBed bed = softener.bed(BeadRequest.toDomain(request.bead(), explanation), explanation);
        double height = softener.tankHeightMetres(explanation);
        double celsius = explanation.resolve(request.waterTemperature(), WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS,
                Resolved.of("/waterTemperature", units.temperature(WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS)).byDefault(OWN));
        double crushedPercent = explanation.resolve(request.crushedPercent(), BedHydraulicsRequest.ASSUMED_CRUSHED_PERCENT,
                Resolved.of("/crushedPercent", BedHydraulicsRequest.ASSUMED_CRUSHED_PERCENT, "%").byDefault(OWN));
        return new BedHydraulics(bed, height, celsius, crushedPercent / 100);
    }

    private static BedDuty duty(BedHydraulicsRequest request, Model model, Explanation explanation) {
        double targetPercent = explanation.resolve(request.targetExpansionPercent(), BedHydraulicsRequest.DEFAULT_TARGET_PERCENT,
                Resolved.of("/targetExpansionPercent", BedHydraulicsRequest.DEFAULT_TARGET_PERCENT, "%").byDefault("CP-CYCLE"));
        return new BedDuty(targetPercent / 100, request.softener().resolved(model).cycleFlows(), FlowsRequest.base(request.serviceFlow()),
                FlowsRequest.base(request.peakFlow()));
    }

    /** The flows that are given, and what is taken for the others. */
    private static void assumeFlows(BedHydraulicsRequest request, BackwashFlow chosen, AnswerUnits units, Explanation explanation) {
        FlowsRequest flows = request.softener().flows();
        assumeFlow(flows == null ? null : flows.drain(), Resolved.of("/softener/flows/drain", units.flow(chosen.litresPerMinute()))
                .estimated("CP-CYCLE").noting(Message.of("assumed.resin.drainFlowChoose")), explanation);
        Message noLimit = Message.of("assumed.common.unknownTakenNoLimit");
        assumeFlow(flows == null ? null : flows.supply(),
                Resolved.inWords("/softener/flows/supply", noLimit).byDefault("CP-CYCLE"), explanation);
        assumeFlow(flows == null ? null : flows.drainLine(),
                Resolved.inWords("/softener/flows/drainLine", noLimit).byDefault("CP-CYCLE"), explanation);
        Message none = Message.of("assumed.resin.none");
        assumeFlow(request.serviceFlow(), Resolved.inWords("/serviceFlow", none).byDefault("REQUEST"), explanation);
        assumeFlow(request.peakFlow(), Resolved.inWords("/peakFlow", none).byDefault("REQUEST"), explanation);
    }

    private static void assumeFlow(FlowQuantity given, Resolved otherwise, Explanation explanation) {
        explanation.assume(given == null ? otherwise : Resolved.of(otherwise.place(), given));
    }

    private static Message summary(BedHydraulics hydraulics, BedLimit lasting, BedLimit peaks,
            AnswerUnits units) {
        double limit = hydraulics.cleanContinuousBounds().get(0).flowLitresPerMinute();
        Message takes = Message.of("computeBedHydraulics.bedTakesAllDay",
                Text.rounded(units.length(hydraulics.bed().depthMetres())), Text.rounded(lasting.flow()),
                Message.of(lasting.binding()), Text.rounded(peaks.flow()), Message.of(peaks.binding()));
        Message loses = Message.of("computeBedHydraulics.pressureDropCleanBeads",
                Text.rounded(lasting.flow()), Text.rounded(units.pressure(hydraulics.cleanDropPascals(limit) / 1000)),
                Text.rounded(units.pressure(hydraulics.crushedDropPascals(limit) / 1000)),
                Text.whole(100 * hydraulics.crushedShare()));
        return Message.sentences(List.of(takes, loses));
    }

    private static Message backwashSentence(BedBackwash backwash) {
        Message choose = ofChosen(backwash.choose());
        return backwash.fitted() == null ? choose : Message.sentences(choose, ofFitted(backwash.fitted()));
    }

    private static Message ofChosen(DrainFlowEffect drain) {
        Message flow = Text.rounded(drain.flow());
        if (drain.expansionShare() == null) {
            return Message.of("computeBedHydraulics.drainLineFlowControl", flow);
        }
        return drain.staysInTank()
                ? Message.of("computeBedHydraulics.drainLineFlowControlLifts", flow, Text.whole(drain.expansionPercent().doubleValue()))
                : Message.of("computeBedHydraulics.drainLineFlowControlLiftsBed",
                        flow, Text.whole(drain.expansionPercent().doubleValue()));
    }

    private static Message ofFitted(DrainFlowEffect drain) {
        Message flow = Text.rounded(drain.flow());
        if (drain.expansionShare() == null) {
            return Message.of("computeBedHydraulics.fittedDrainLineFlow", flow);
        }
        return drain.staysInTank()
                ? Message.of("computeBedHydraulics.fittedDrainLineFlowControl", flow, Text.whole(drain.expansionPercent().doubleValue()))
                : Message.of("computeBedHydraulics.fittedDrainLineFlowControlLifts",
                        flow, Text.whole(drain.expansionPercent().doubleValue()));
    }

    private static void explain(BedHydraulics hydraulics, AnswerUnits units, Explanation explanation) {
        assumeMethod(units, explanation);
        CycleBed.explain(units, explanation);
        BedFlowLine.explain(units, explanation);
        BedLimit.explain(units, explanation);
        BedBackwash.explain(units, explanation);
        explanation.caution(Caution.POWER_AND_PRESSURE, Caution.LOCAL_CODE_DECIDES);
        if (hydraulics.temperatureCelsius() < WaterCautions.COLD_CELSIUS) {
            explanation.caution(Caution.COLD_WATER);
        }
    }

    /** What no property of the request sets. */
    private static void assumeMethod(AnswerUnits units, Explanation explanation) {
        explanation.assume(Resolved.of("fragmentDiameter", 100 * Packing.ASSUMED_FRAGMENT_DIAMETER_SHARE, "%").byDefault(OWN)
                .noting(Message.of("assumed.resin.diameterBead")));
        explanation.assume(Resolved.of("crushedVoidLoss", 100 * Packing.ASSUMED_VOID_LOSS_SHARE, "%").byDefault(OWN)
                .noting(Message.of("assumed.resin.bedCrushedBeadsOr", Text.number(BedHydraulicsRequest.ASSUMED_CRUSHED_PERCENT))));
        explanation.assume(Resolved.of("weakExpansion", 100 * BackwashEffect.ASSUMED_WEAK_EXPANSION_SHARE, "%").byDefault(OWN)
                .noting(Message.of("assumed.common.belowBedDepth")));
        explanation.assume(Resolved.of("drainFlowStep", units.flow(BackwashFlow.ASSUMED_STEP_LITRES_PER_MINUTE)).byDefault(OWN));
        explanation.assume(Resolved.inWords("/softener", Message.of("assumed.resin.onlyResinTankDrain")));
    }
}
