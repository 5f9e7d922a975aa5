// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.answer.cycle.CycleBed;
import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.regeneration.BackwashFlow;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.resin.Backwash;
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
import java.util.OptionalDouble;
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

    private ComputeBedHydraulics() {
    }

    private static BedHydraulicsAnswer answer(BedHydraulicsRequest request) {
        AnswerUnits units = HomeCountry.units(request.units(), request.country());
        Explanation explanation = units.explanation();
        explanation.caution(HomeCountry.airGap(HomeCountry.of(request.country(), explanation)));
        BedHydraulics hydraulics = hydraulics(request, units, explanation);
        BedDuty duty = duty(request, units, explanation);
        BedLimit lasting = BedLimit.of(hydraulics.cleanContinuousBounds(), hydraulics.crushedContinuousBounds(), units);
        BedLimit peaks = BedLimit.of(hydraulics.cleanPeakBounds(), hydraulics.crushedPeakBounds(), units);
        BedBackwash backwash = BedBackwash.of(hydraulics, duty, units);
        BackwashFlow flow = hydraulics.backwashFlow(duty);
        CycleBed bed = CycleBed.of(hydraulics.bed(), hydraulics.backwash(flow.litresPerMinute()), units);
        explain(hydraulics, duty, units, explanation);
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

    private static BedHydraulics hydraulics(BedHydraulicsRequest request, AnswerUnits units, Explanation explanation) {
        SoftenerRequest softener = request.softener();
        ResinBed bed = softener.bed(BeadRequest.toDomain(request.bead(), explanation), explanation);
        double height = softener.tankHeightMetres(explanation);
        double celsius = explanation.orDefault("waterTemperature", request.waterTemperature(),
                WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS,
                Text.of(units.temperature(WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS)));
        double crushedPercent = explanation.orDefault("crushedPercent", request.crushedPercent(),
                100 * Packing.ASSUMED_CRUSHED_SHARE, percent -> Message.of("pattern.percent", percent));
        return new BedHydraulics(bed, height, celsius, crushedPercent / 100);
    }

    private static BedDuty duty(BedHydraulicsRequest request, AnswerUnits units, Explanation explanation) {
        double targetPercent = explanation.orDefault("targetExpansionPercent", request.targetExpansionPercent(),
                100 * Backwash.TARGET_EXPANSION_SHARE, percent -> Message.of("pattern.percent", percent));
        BedDuty duty = new BedDuty(targetPercent / 100, request.softener().cycleFlows(), base(request.serviceFlow()),
                base(request.peakFlow()));
        assumeFlow("softener.flows.drain", duty.flows().drainLitresPerMinute(), Message.of("assumed.resin.drainFlowChoose"), units,
                explanation);
        assumeFlow("softener.flows.supply", duty.flows().supplyLitresPerMinute(), Message.of("assumed.common.unknownTakenNoLimit"), units,
                explanation);
        assumeFlow("softener.flows.drainLine", duty.flows().drainLineLitresPerMinute(), Message.of("assumed.common.unknownTakenNoLimit"),
                units, explanation);
        assumeFlow("serviceFlow", duty.serviceLitresPerMinute(), Message.of("assumed.resin.none"), units, explanation);
        assumeFlow("peakFlow", duty.peakLitresPerMinute(), Message.of("assumed.resin.none"), units, explanation);
        return duty;
    }

    private static OptionalDouble base(FlowQuantity given) {
        return given == null ? OptionalDouble.empty() : OptionalDouble.of(given.inBase());
    }

    private static void assumeFlow(String name, OptionalDouble given, Message fallback, AnswerUnits units,
            Explanation explanation) {
        explanation.assume(name, given.isPresent() ? Text.of(units.flow(given.getAsDouble())) : fallback,
                given.isPresent() ? Origin.CALLER : Origin.DEFAULT);
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
                Text.number(100 * hydraulics.crushedShare()));
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

    private static void explain(BedHydraulics hydraulics, BedDuty duty, AnswerUnits units, Explanation explanation) {
        explanation.assume("fragmentDiameter", Message.of("assumed.resin.diameterBead",
                Text.number(100 * Packing.ASSUMED_FRAGMENT_DIAMETER_SHARE)), Origin.DEFAULT);
        explanation.assume("crushedVoidLoss", Message.of("assumed.resin.bedCrushedBeadsOr",
                Text.number(100 * Packing.ASSUMED_VOID_LOSS_SHARE), Text.number(100 * Packing.ASSUMED_CRUSHED_SHARE)),
                Origin.DEFAULT);
        explanation.assume("weakExpansion", Message.of("assumed.common.belowBedDepth",
                Text.number(100 * BackwashEffect.ASSUMED_WEAK_EXPANSION_SHARE)), Origin.DEFAULT);
        explanation.assume("drainFlowStep", Text.of(units.flow(BackwashFlow.ASSUMED_STEP_LITRES_PER_MINUTE)),
                Origin.DEFAULT);
        explanation.assume("softener", Message.of("assumed.resin.onlyResinTankDrain"),
                Origin.DERIVED);
        CycleBed.explain(units, explanation);
        BedBeads.explain(explanation);
        BedWater.explain(explanation);
        BedFlowLine.explain(units, explanation);
        BedLimit.explain(units, explanation);
        BedBackwash.explain(duty, units, explanation);
        explanation.caution(Caution.POWER_AND_PRESSURE, Caution.LOCAL_CODE_DECIDES);
        if (hydraulics.temperatureCelsius() < WaterCautions.COLD_CELSIUS) {
            explanation.caution(Caution.COLD_WATER);
        }
    }
}
