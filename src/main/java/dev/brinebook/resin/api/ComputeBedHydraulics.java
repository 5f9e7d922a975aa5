package dev.brinebook.resin.api;

import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Text;
import dev.brinebook.caution.Caution;
import dev.brinebook.quantity.FlowUnit;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.FlowQuantity;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.api.CycleBed;
import dev.brinebook.resin.Backwash;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.resin.Packing;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.softener.BedDuty;
import dev.brinebook.softener.BedFinding;
import dev.brinebook.softener.BedHydraulics;
import dev.brinebook.softener.api.SoftenerRequest;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

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
        AnswerUnits units = AnswerUnits.orDefault(request.units());
        Explanation explanation = new Explanation();
        BedHydraulics hydraulics = hydraulics(request, explanation);
        BedDuty duty = duty(request, explanation);
        BedLimit lasting = BedLimit.of(hydraulics.cleanContinuousBounds(), hydraulics.crushedContinuousBounds(), units);
        BedLimit peaks = BedLimit.of(hydraulics.cleanPeakBounds(), hydraulics.crushedPeakBounds(), units);
        BedBackwash backwash = BedBackwash.of(hydraulics, duty, units);
        double judged = duty.drainLitresPerMinute().orElseGet(() ->
                hydraulics.drainFlowLitresPerMinute(duty.targetExpansionShare()));
        CycleBed bed = CycleBed.of(hydraulics.bed(), hydraulics.backwash(judged), units);
        explain(hydraulics, duty, explanation);
        List<BedFinding> findings = BedFinding.of(hydraulics, duty);
        return new BedHydraulicsAnswer(summary(hydraulics, lasting, peaks, units) + backwashSentence(backwash)
                + findings.stream().map(finding -> " " + finding.sentence()).collect(Collectors.joining()), bed,
                BedBeads.of(hydraulics.bed().bead(), hydraulics.crushedShare()),
                BedWater.of(hydraulics.temperatureCelsius(), units), BedFlowLine.all(hydraulics, duty, units), lasting, peaks,
                backwash, findings.stream().map(BedFindingLine::of).toList(), explanation.cautions(),
                explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static BedHydraulics hydraulics(BedHydraulicsRequest request, Explanation explanation) {
        SoftenerRequest softener = request.softener();
        ResinBed bed = softener.bed(BeadRequest.toDomain(request.bead(), explanation), explanation);
        double height = softener.tankHeightMetres(explanation);
        double celsius = explanation.orDefault("waterTemperature", request.waterTemperature(),
                WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS, "12 C");
        double crushedPercent = explanation.orDefault("crushedPercent", request.crushedPercent(),
                100 * Packing.ASSUMED_CRUSHED_SHARE, "%");
        return new BedHydraulics(bed, height, celsius, crushedPercent / 100);
    }

    private static BedDuty duty(BedHydraulicsRequest request, Explanation explanation) {
        double targetPercent = explanation.orDefault("targetExpansionPercent", request.targetExpansionPercent(),
                100 * Backwash.TARGET_EXPANSION_SHARE, "%");
        BedDuty duty = new BedDuty(targetPercent / 100, request.softener().drainLitresPerMinute(),
                request.softener().supplyLitresPerMinute(), base(request.serviceFlow()), base(request.peakFlow()));
        assumeFlow("softener.flows.drain", duty.drainLitresPerMinute(), "the one to choose", explanation);
        assumeFlow("softener.flows.supply", duty.supplyLitresPerMinute(), "unknown, not checked", explanation);
        assumeFlow("serviceFlow", duty.serviceLitresPerMinute(), "none", explanation);
        assumeFlow("peakFlow", duty.peakLitresPerMinute(), "none", explanation);
        return duty;
    }

    private static OptionalDouble base(FlowQuantity given) {
        return given == null ? OptionalDouble.empty() : OptionalDouble.of(given.inBase());
    }

    private static void assumeFlow(String name, OptionalDouble given, String fallback, Explanation explanation) {
        explanation.assume(name, given.isPresent() ? Text.number(FlowUnit.GPM.fromBase(given.getAsDouble())) + " gpm or "
                + Text.number(given.getAsDouble()) + " L/min" : fallback, given.isPresent() ? Origin.CALLER : Origin.DEFAULT);
    }

    private static String summary(BedHydraulics hydraulics, BedLimit lasting, BedLimit peaks,
            AnswerUnits units) {
        double limit = hydraulics.cleanContinuousBounds().get(0).flowLitresPerMinute();
        return "The bed is " + Text.of(units.length(hydraulics.bed().depthMetres())) + " deep and takes "
                + Text.of(lasting.flow()) + " all day (" + words(lasting.binding()) + ") and " + Text.of(peaks.flow())
                + " in short peaks (" + words(peaks.binding()) + "). At " + Text.of(lasting.flow()) + " it loses "
                + Text.of(units.pressure(hydraulics.cleanDropPascals(limit) / 1000)) + " clean and "
                + Text.of(units.pressure(hydraulics.crushedDropPascals(limit) / 1000)) + " with "
                + Text.number(100 * hydraulics.crushedShare()) + " % of the beads crushed. ";
    }

    private static String backwashSentence(BedBackwash backwash) {
        DrainFlowEffect fitted = backwash.fitted();
        return "A drain line flow control of " + Text.of(backwash.choose().flow()) + effect(backwash.choose())
                + (fitted == null ? "" : "; the one of " + Text.of(fitted.flow()) + " that is fitted" + effect(fitted)) + ".";
    }

    private static String effect(DrainFlowEffect drain) {
        return drain.expansionShare() == null ? " carries the resin out of the tank"
                : " lifts it by " + Text.number(100 * drain.expansionShare().doubleValue()) + " %"
                        + (drain.staysInTank() ? "" : ", which is more than the tank has room for");
    }

    private static String words(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static void explain(BedHydraulics hydraulics, BedDuty duty, Explanation explanation) {
        explanation.assume("fragmentDiameter", Text.number(100 * Packing.ASSUMED_FRAGMENT_DIAMETER_SHARE)
                + " % of that of a bead", Origin.DEFAULT);
        explanation.assume("crushedVoidLoss", Text.number(100 * Packing.ASSUMED_VOID_LOSS_SHARE) + " % of the bed at "
                + Text.number(100 * Packing.ASSUMED_CRUSHED_SHARE) + " % of crushed beads or more, in step below",
                Origin.DEFAULT);
        explanation.assume("weakExpansion", "below " + Text.number(100 * BackwashEffect.ASSUMED_WEAK_EXPANSION_SHARE)
                + " % of the depth", Origin.DEFAULT);
        explanation.assume("drainFlowStep", "half a gallon per minute or "
                + Text.number(CycleDesign.ASSUMED_DRAIN_STEP_LITRES_PER_MINUTE) + " L/min", Origin.DEFAULT);
        explanation.assume("softener", "only its resin, its tank and its flows of drain and supply are used", Origin.DERIVED);
        CycleBed.explain(explanation);
        BedBeads.explain(explanation);
        BedWater.explain(explanation);
        BedFlowLine.explain(explanation);
        BedLimit.explain(explanation);
        BedBackwash.explain(duty, explanation);
        explanation.caution(Caution.POWER_AND_PRESSURE, Caution.DRAIN_AIR_GAP, Caution.LOCAL_CODE_DECIDES);
        if (hydraulics.temperatureCelsius() < WaterCautions.COLD_CELSIUS) {
            explanation.caution(Caution.COLD_WATER);
        }
    }
}
