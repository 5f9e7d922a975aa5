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
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import dev.brinebook.wording.Message;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What water does in a bed. */
public final class ComputeBedHydraulics {

    public static final Operation<BedHydraulicsRequest, BedHydraulicsAnswer> OPERATION = new Operation<>(
            "computeBedHydraulics", "/v1/bed-hydraulics", "Work out pressure drop, flow limits and backwash of a bed",
            "Choose this when flow or pressure is the question: what pressure a bed loses at a flow, clean and with crushed"
                    + " beads; how much flow it takes all day and in short peaks and which limit binds; how long the water is"
                    + " in contact; which drain line flow control lifts the bed far enough in this water and not out of the"
                    + " tank. To work out the minutes of a regeneration use designCycle, to choose a softener sizeSoftener.",
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
        Message summary = Message.joined(" ", Stream.concat(Stream.of(summary(hydraulics, lasting, peaks, units),
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
                100 * Packing.ASSUMED_CRUSHED_SHARE, percent -> Message.of("{0} %", percent));
        return new BedHydraulics(bed, height, celsius, crushedPercent / 100);
    }

    private static BedDuty duty(BedHydraulicsRequest request, AnswerUnits units, Explanation explanation) {
        double targetPercent = explanation.orDefault("targetExpansionPercent", request.targetExpansionPercent(),
                100 * Backwash.TARGET_EXPANSION_SHARE, percent -> Message.of("{0} %", percent));
        BedDuty duty = new BedDuty(targetPercent / 100, request.softener().cycleFlows(), base(request.serviceFlow()),
                base(request.peakFlow()));
        assumeFlow("softener.flows.drain", duty.flows().drainLitresPerMinute(), Message.of("the one to choose"), units, explanation);
        assumeFlow("softener.flows.supply", duty.flows().supplyLitresPerMinute(), Message.of("unknown: it limits nothing"), units,
                explanation);
        assumeFlow("softener.flows.drainLine", duty.flows().drainLineLitresPerMinute(), Message.of("unknown: it limits nothing"),
                units, explanation);
        assumeFlow("serviceFlow", duty.serviceLitresPerMinute(), Message.of("none"), units, explanation);
        assumeFlow("peakFlow", duty.peakLitresPerMinute(), Message.of("none"), units, explanation);
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
        Message takes = Message.of("The bed is {0} deep and takes {1} all day ({2}) and {3} in short peaks ({4}).",
                Text.of(units.length(hydraulics.bed().depthMetres())), Text.of(lasting.flow()),
                Message.saying(lasting.binding()), Text.of(peaks.flow()), Message.saying(peaks.binding()));
        Message loses = Message.of("At {0} it loses {1} clean and {2} with {3} % of the beads crushed.",
                Text.of(lasting.flow()), Text.of(units.pressure(hydraulics.cleanDropPascals(limit) / 1000)),
                Text.of(units.pressure(hydraulics.crushedDropPascals(limit) / 1000)),
                Text.number(100 * hydraulics.crushedShare()));
        return Message.joined(" ", List.of(takes, loses));
    }

    private static Message backwashSentence(BedBackwash backwash) {
        Message choose = ofChosen(backwash.choose());
        return backwash.fitted() == null ? Message.of("{0}.", choose)
                : Message.of("{0}; {1}.", choose, ofFitted(backwash.fitted()));
    }

    private static Message ofChosen(DrainFlowEffect drain) {
        Message flow = Text.of(drain.flow());
        if (drain.expansionShare() == null) {
            return Message.of("A drain line flow control of {0} carries the resin out of the tank", flow);
        }
        return drain.staysInTank()
                ? Message.of("A drain line flow control of {0} lifts it by {1} %", flow, drain.expansionPercent())
                : Message.of("A drain line flow control of {0} lifts it by {1} %, which is more than the tank has room for",
                        flow, drain.expansionPercent());
    }

    private static Message ofFitted(DrainFlowEffect drain) {
        Message flow = Text.of(drain.flow());
        if (drain.expansionShare() == null) {
            return Message.of("the one of {0} that is fitted carries the resin out of the tank", flow);
        }
        return drain.staysInTank()
                ? Message.of("the one of {0} that is fitted lifts it by {1} %", flow, drain.expansionPercent())
                : Message.of("the one of {0} that is fitted lifts it by {1} %, which is more than the tank has room for",
                        flow, drain.expansionPercent());
    }

    private static void explain(BedHydraulics hydraulics, BedDuty duty, AnswerUnits units, Explanation explanation) {
        explanation.assume("fragmentDiameter", Message.of("{0} % of that of a bead",
                Text.number(100 * Packing.ASSUMED_FRAGMENT_DIAMETER_SHARE)), Origin.DEFAULT);
        explanation.assume("crushedVoidLoss", Message.of("{0} % of the bed at {1} % of crushed beads or more, in step below",
                Text.number(100 * Packing.ASSUMED_VOID_LOSS_SHARE), Text.number(100 * Packing.ASSUMED_CRUSHED_SHARE)),
                Origin.DEFAULT);
        explanation.assume("weakExpansion", Message.of("below {0} % of the depth",
                Text.number(100 * BackwashEffect.ASSUMED_WEAK_EXPANSION_SHARE)), Origin.DEFAULT);
        explanation.assume("drainFlowStep", Text.of(units.flow(BackwashFlow.ASSUMED_STEP_LITRES_PER_MINUTE)),
                Origin.DEFAULT);
        explanation.assume("softener", Message.of("only its resin, its tank and its flows of drain and supply are used"),
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
