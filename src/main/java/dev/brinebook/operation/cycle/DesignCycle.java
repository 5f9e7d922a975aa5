// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.cycle;

import dev.brinebook.answer.cycle.CycleBed;
import dev.brinebook.answer.cycle.CycleTable;
import dev.brinebook.answer.cycle.RefillSetting;
import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.answer.resin.EfficiencyLineAnswer;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.model.Model;
import dev.brinebook.quantity.BedFlowUnit;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.CycleFinding;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.request.softener.CycleFlowAssumptions;
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

    private static final String OWN = "OWN-ASSUMPTION";
    private static final String CYCLE = "CP-CYCLE";
    private static final String BED_VOLUMES = "bedVolumes";

    private DesignCycle() {
    }

    private static CycleDesignAnswer answer(CycleDesignRequest request, Model model) {
        AnswerUnits units = HomeCountry.units(request.units(), request.country());
        Explanation explanation = units.explanation();
        explanation.caution(HomeCountry.airGap(HomeCountry.of(request.country(), explanation)));
        CapacityModel table = PreferencesRequest.orNone(request.preferences()).tableOnly(explanation)
                .withSitesLeft(request.softener().resolved(model).sitesLeftInUnknownWater(explanation));
        Softener softener = request.softener().resolved(model).toDomain(table, explanation);
        double dose = request.softener().resolved(model).doseGramsPerLitre(explanation);
        CycleDesign design = design(request, softener, dose, units, explanation);
        Cycle cycle = design.cycle();
        DosedSoftener dosed = new DosedSoftener(softener, dose, cycle);
        BackwashEffect backwash = BackwashEffect.of(softener.bed(), softener.tankHeightMetres(),
                cycle.step(Kind.BACKWASH).flowLitresPerMinute(), design.waterTemperatureCelsius());
        CycleTable steps = CycleTable.of(cycle, units);
        double waterLitresPerKilogram = cycle.waterLitresPerKilogram(dosed.capacityGrams());
        explain(request, design, cycle, explanation, table, units);
        List<EfficiencyLineAnswer> efficiency = EfficiencyLineAnswer.of(verdicts(dosed, waterLitresPerKilogram), units,
                "/efficiency", explanation);
        List<CycleFinding> findings = CycleFinding.of(cycle, backwash);
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
        double water = explanation.resolve(request.waterTemperature(), WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS,
                Resolved.of("/waterTemperature", units.temperature(WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS)).byDefault(OWN));
        double brineTank = explanation.resolve(request.brineTankTemperature(), water,
                Resolved.of("/brineTankTemperature", units.temperature(water)).estimated(OWN)
                        .noting(Message.of("assumed.regeneration.temperatureWater")));
        boolean secondBackwash = Boolean.TRUE.equals(request.secondBackwash());
        Resolved second = Resolved.ofCode("/secondBackwash", String.valueOf(secondBackwash));
        explanation.assume(request.secondBackwash() == null ? second.byDefault(OWN) : second);
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

    private static void explain(CycleDesignRequest request, CycleDesign design, Cycle cycle, Explanation explanation,
            CapacityModel table, AnswerUnits units) {
        CycleFlowAssumptions.record(request.softener().flows(), design, cycle, explanation);
        assumeGuides(explanation);
        if (request.softener().minutes() != null) {
            explanation.assume(Resolved.inWords("/softener/minutes", Message.of("assumed.regeneration.usedMinutesCalculated"))
                    .estimated(CYCLE));
        }
        CycleTable.explain("/cycle", explanation);
        CycleBackwash.explain(units, explanation);
        CycleWater.explain(units, explanation);
        CycleBrine.explain(design, cycle.brine(), explanation);
        RefillSetting.explain("/refill", design.salt(), explanation);
        CapacityBasis.explain("/capacity", table, units, explanation);
        cautions(design, explanation);
    }

    private static void assumeGuides(Explanation explanation) {
        explanation.assume(Resolved.of("fastRinse", Brining.ASSUMED_FAST_RINSE_BED_VOLUMES, BED_VOLUMES).byDefault(OWN));
        explanation.assume(Resolved.of("slowRinse", Brining.SLOW_RINSE_BED_VOLUMES, BED_VOLUMES).byDefault("UFC-3-240-13FN"));
        explanation.assume(Resolved.of("weakExpansion", 100 * BackwashEffect.ASSUMED_WEAK_EXPANSION_SHARE, "%").byDefault(OWN)
                .noting(Message.of("assumed.common.belowBedDepth")));
        String perHour = BedFlowUnit.BED_VOLUMES_PER_HOUR.symbol();
        explanation.assume(Resolved.of("minUsualBrineFlow", CycleFinding.ASSUMED_MIN_BRINE_BED_VOLUMES_PER_HOUR, perHour).byDefault(OWN));
        explanation.assume(Resolved.of("maxUsualBrineFlow", CycleFinding.ASSUMED_MAX_BRINE_BED_VOLUMES_PER_HOUR, perHour).byDefault(OWN));
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
