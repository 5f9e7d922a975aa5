// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.cycle;

import dev.brinebook.answer.cycle.CycleBed;
import dev.brinebook.answer.cycle.CycleTable;
import dev.brinebook.answer.cycle.RefillSetting;
import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.answer.resin.EfficiencyLineAnswer;
import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.regeneration.BackwashFlow;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.CycleFinding;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.resin.Brining;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.EfficiencyLine;
import dev.brinebook.resin.EfficiencyLine.StartedBy;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.softener.Softener;
import dev.brinebook.text.Joint;
import dev.brinebook.text.Message;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import java.util.List;
import java.util.OptionalDouble;

/** Minutes, flows and water of a regeneration. */
public final class DesignCycle {

    public static final Operation<CycleDesignRequest, CycleDesignAnswer> OPERATION = new Operation<>(
            "designCycle", "/v1/regeneration-cycle", "Design the steps of a regeneration",
            "Choose this to set up a softener's controller. It calculates the minutes, flow and water of each step from the resin, the "
                    + "tank, the salt dose and the temperatures. It checks that the backwash expands the bed enough and keeps the resin "
                    + "in the tank. It gives the brine, the refill by water, the salt for rounded minutes, and the total time, water, "
                    + "capacity and efficiency. To check minutes that are already set use reviewSettings. For the flow limits of the "
                    + "bed in service use computeBedHydraulics.",
            CycleDesignRequest.class, CycleDesignAnswer.class, DesignCycle::answer, List.of(),
            List.of("well-family", "apartment", "apartment-potassium"));

    private DesignCycle() {
    }

    private static CycleDesignAnswer answer(CycleDesignRequest request) {
        AnswerUnits units = HomeCountry.units(request.units(), request.country());
        Explanation explanation = units.explanation();
        explanation.caution(HomeCountry.airGap(HomeCountry.of(request.country(), explanation)));
        CapacityModel table = PreferencesRequest.orNone(request.preferences()).tableOnly(explanation)
                .withSitesLeft(request.softener().sitesLeftInUnknownWater(explanation));
        Softener softener = request.softener().toDomain(table, explanation);
        double dose = request.softener().doseGramsPerLitre(explanation);
        CycleDesign design = design(request, softener, dose, units, explanation);
        Cycle cycle = design.cycle();
        DosedSoftener dosed = new DosedSoftener(softener, dose, cycle);
        BackwashEffect backwash = BackwashEffect.of(softener.bed(), softener.tankHeightMetres(),
                cycle.step(Kind.BACKWASH).flowLitresPerMinute(), design.waterTemperatureCelsius());
        CycleTable steps = CycleTable.of(cycle, units);
        double waterLitresPerKilogram = cycle.waterLitresPerKilogram(dosed.capacityGrams());
        explain(request, design, explanation, table, units);
        List<EfficiencyLineAnswer> efficiency = EfficiencyLineAnswer.of(verdicts(dosed, waterLitresPerKilogram), units,
                "/efficiency", explanation);
        List<CycleFinding> findings = CycleFinding.of(cycle, backwash);
        if (findings.stream().anyMatch(finding -> finding.step().isPresent())) {
            CycleFindingLine.explain(explanation);
        }
        return new CycleDesignAnswer(summary(steps, dosed, units), steps, CycleBed.of(softener.bed(), backwash, units),
                CycleBackwash.of(softener.bed(), cycle, backwash, design.waterTemperatureCelsius(), units),
                CycleBrine.of(design, cycle, units),
                RefillSetting.of(cycle.step(Kind.REFILL), design.salt(), design.brineTankTemperatureCelsius(), units),
                findings.stream().map(finding -> CycleFindingLine.of(finding, cycle, units)).toList(),
                units.capacity(dosed.capacityGrams()), units.saltEfficiency(dosed.saltEfficiencyGramsPerGram()),
                units.waterPerCapacity(waterLitresPerKilogram), CycleWater.of(softener.bed(), cycle, units), efficiency,
                CycleYear.of(request.regenerationsPerYear(), dosed, units), explanation.cautions(),
                explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static CycleDesign design(CycleDesignRequest request, Softener softener, double doseGramsPerLitre,
            AnswerUnits units, Explanation explanation) {
        double water = explanation.orDefault("waterTemperature", request.waterTemperature(),
                WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS,
                Text.of(units.temperature(WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS)));
        double brineTank = explanation.orDefault("brineTankTemperature", request.brineTankTemperature(), water,
                Message.of("assumed.regeneration.temperatureWater", Text.of(units.temperature(water))));
        boolean secondBackwash = Boolean.TRUE.equals(request.secondBackwash());
        explanation.assume("secondBackwash", Message.verbatim(String.valueOf(secondBackwash)),
                request.secondBackwash() == null ? Origin.DEFAULT : Origin.CALLER);
        return softener.cycleDesign(doseGramsPerLitre, water, brineTank, secondBackwash);
    }

    /** Salt and water compared with each limit, assuming that control type and interval meet it. */
    private static List<EfficiencyLine.Verdict> verdicts(DosedSoftener dosed, double waterLitresPerKilogram) {
        return EfficiencyLine.all().stream().map(line -> line.verdict(new EfficiencyLine.Performance(
                dosed.saltEfficiencyGramsPerGram(), waterLitresPerKilogram, line.startedBy() == StartedBy.DEMAND,
                line.minDaysBetween().orElse(1)))).toList();
    }

    private static Message summary(CycleTable table, DosedSoftener dosed, AnswerUnits units) {
        Message minutes = Message.joined(Joint.COMMA, table.steps().stream().map(step -> Message.of("pattern.spaced",
                Message.of(step.step()), step.tenthMinutes() == null ? step.wholeMinutes() : step.tenthMinutes()))
                .toList());
        return Message.of("designCycle.regenerationTakesMinutesSalt", Text.whole(Math.ceil(table.totalMinutes().doubleValue())),
                Text.rounded(units.mass(dosed.saltGrams() / 1000)), Text.rounded(table.water()),
                Text.rounded(units.capacity(dosed.capacityGrams())), minutes);
    }

    private static void explain(CycleDesignRequest request, CycleDesign design, Explanation explanation,
            CapacityModel table, AnswerUnits units) {
        assumeFlows(design.flows(), units, explanation);
        assumeGuides(explanation);
        if (request.softener().minutes() != null) {
            explanation.assume("softener.minutes", Message.of("assumed.regeneration.usedMinutesCalculated"), Origin.DERIVED);
        }
        CycleTable.explain("/cycle", explanation);
        CycleBackwash.explain(units, explanation);
        CycleWater.explain(units, explanation);
        CycleBrine.explain(design, explanation);
        RefillSetting.explain("/refill", design.salt(), explanation);
        CapacityBasis.explain("/capacity", table, units, explanation);
        explanation.because("/saltEfficiency", Message.of("formula.common.capacitySaltPerRegeneration"), "WQP-2009");
        explanation.because("/waterPerCapacity", Message.of("formula.common.waterPerRegenerationCapacity"), "DOE-BASC");
        if (request.regenerationsPerYear() != null) {
            CycleYear.explain(explanation);
        }
        cautions(design, explanation);
    }

    private static void assumeGuides(Explanation explanation) {
        explanation.assume("fastRinse", Message.of("assumed.regeneration.bedVolumes",
                Text.number(Brining.ASSUMED_FAST_RINSE_BED_VOLUMES)), Origin.DEFAULT);
        explanation.assume("slowRinse", Message.of("assumed.regeneration.bedVolumes2",
                Text.number(Brining.SLOW_RINSE_BED_VOLUMES)), Origin.DEFAULT);
        explanation.assume("weakExpansion", Message.of("assumed.common.belowBedDepth",
                Text.number(100 * BackwashEffect.ASSUMED_WEAK_EXPANSION_SHARE)), Origin.DEFAULT);
        explanation.assume("usualBrineFlow", Message.of("assumed.regeneration.bedVolumesPerHour",
                Text.number(CycleFinding.ASSUMED_MIN_BRINE_BED_VOLUMES_PER_HOUR),
                Text.number(CycleFinding.ASSUMED_MAX_BRINE_BED_VOLUMES_PER_HOUR)), Origin.DEFAULT);
    }

    private static void assumeFlows(CycleFlows flows, AnswerUnits units, Explanation explanation) {
        assumeFlow("drain", flows.drainLitresPerMinute(), Message.of("assumed.regeneration.nextStepLiftsBed",
                Text.of(units.flow(BackwashFlow.ASSUMED_STEP_LITRES_PER_MINUTE))), units, explanation);
        assumeFlow("brineDraw", flows.brineLitresPerMinute(), flows.brineSuctionLitresPerMinute().isPresent()
                ? Message.of("assumed.regeneration.flowDilutesSuction10")
                : Message.of("assumed.regeneration.bedVolumesPerHour2", Text.number(CycleDesign.ASSUMED_BRINE_BED_VOLUMES_PER_HOUR)),
                units, explanation);
        assumeFlow("brineSuction", flows.brineSuctionLitresPerMinute(), Message.of("assumed.regeneration.flowMakes10Brine"), units,
                explanation);
        assumeFlow("fastRinse", flows.fastRinseLitresPerMinute(), Message.of("assumed.regeneration.sameBackwashFlow"), units, explanation);
        assumeFlow("refill", flows.refillLitresPerMinute(),
                Text.of(units.flow(CycleDesign.ASSUMED_REFILL_LITRES_PER_MINUTE)), units, explanation);
        assumeFlow("supply", flows.supplyLitresPerMinute(), Message.of("assumed.common.unknownTakenNoLimit"), units, explanation);
        assumeFlow("drainLine", flows.drainLineLitresPerMinute(), Message.of("assumed.common.unknownTakenNoLimit"), units, explanation);
    }

    private static void assumeFlow(String name, OptionalDouble given, Message fallback, AnswerUnits units,
            Explanation explanation) {
        explanation.assume("softener.flows." + name, given.isPresent() ? Text.of(units.flow(given.getAsDouble())) : fallback,
                given.isPresent() ? Origin.CALLER : Origin.DEFAULT);
    }

    private static void cautions(CycleDesign design, Explanation explanation) {
        explanation.caution(Caution.POWER_AND_PRESSURE, Caution.LOCAL_CODE_DECIDES,
                Caution.SEWER_SALT_LIMITS, Caution.EFFICIENCY_NOT_CERTIFIED);
        if (design.waterTemperatureCelsius() < WaterCautions.COLD_CELSIUS) {
            explanation.caution(Caution.COLD_WATER);
        }
        if (design.salt() == Salt.POTASSIUM_CHLORIDE) {
            explanation.caution(Caution.POTASSIUM_KIDNEY_HEART);
        }
    }
}
