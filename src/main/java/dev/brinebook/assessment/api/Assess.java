package dev.brinebook.assessment.api;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.assessment.Commissioning;
import dev.brinebook.caution.Caution;
import dev.brinebook.payback.Prices;
import dev.brinebook.prices.api.PricesRequest;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.SaltStore;
import dev.brinebook.regeneration.api.CycleTable;
import dev.brinebook.regeneration.api.RefillSetting;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.Finding;
import dev.brinebook.softener.api.DoseTradeOff;
import dev.brinebook.softener.api.FitAnswer;
import dev.brinebook.softener.api.ReadinessCheck;
import dev.brinebook.softener.api.SettingFinding;
import dev.brinebook.softener.api.SiteRequest;
import dev.brinebook.softener.api.SiteRequest.WasteWater;
import dev.brinebook.softener.api.SoftenerCase;
import dev.brinebook.water.WaterAnalysis.Supply;
import dev.brinebook.water.api.HardnessLines;
import dev.brinebook.water.api.SoftenedWaterAnswer;
import java.util.List;

/** The whole job in one call. */
public final class Assess {

    public static final Operation<AssessmentRequest, AssessmentAnswer> OPERATION = new Operation<>(
            "assess", "/v1/assessment", "Do the whole job on one case",
            "Choose this when the softener that stands there and the household are known and the whole answer is"
                    + " wanted: how hard the water really is, whether the softener fits, what is set wrong, what"
                    + " exactly to set on a metered controller and why, what the conversion needs, a year as found"
                    + " against a year metered on the same days (salt, water, hard days, bags to buy), payback,"
                    + " sodium, and what to be careful about. Every part comes from the same results. For a single"
                    + " part choose its own operation, such as reviewSettings or estimatePayback; where no softener"
                    + " stands there yet, sizeSoftener.",
            AssessmentRequest.class, AssessmentAnswer.class, Assess::answer, List.of(),
            List.of("well-family", "apartment", "holiday-cabin"));

    private Assess() {
    }

    private static AssessmentAnswer answer(AssessmentRequest request) {
        AnswerUnits units = AnswerUnits.orDefault(request.units());
        Explanation explanation = new Explanation();
        SoftenerCase given = SoftenerCase.of(request, explanation);
        Duty duty = given.duty();
        PricesRequest priced = PricesRequest.orNone(request.prices());
        SiteRequest site = SiteRequest.orUnseen(request.site());
        Prices prices = priced.toDomain(duty.water().supply() == Supply.PRIVATE_WELL,
                site.wasteWater() == WasteWater.SEPTIC_SYSTEM, explanation);
        Assessment assessment = Assessment.of(request.softener().found(given, explanation), duty, prices,
                site.toDomain(request.softener().resinAgeYears()));
        SaltStore store = request.softener().saltStore(priced.bagKilograms(explanation), explanation);
        Salt salt = given.found().softener().salt();
        Cycle cycle = assessment.recommended().dosed().cycle();
        warn(assessment, site, explanation);
        explain(assessment, salt, explanation);
        ConversionWorth worth = ConversionWorth.of(assessment, request.conversion(), prices, priced.currency(), explanation);
        RecommendedSettings settings = RecommendedSettings.of(assessment.recommended(), duty, units, explanation);
        return new AssessmentAnswer(explanation.behindStops(summary(assessment, settings, worth, units)),
                HardnessLines.of(duty.hardness(), duty.water().hardnessUncertaintyMgPerL(), units, "/hardness", explanation),
                DemandAnswer.of(duty, units, explanation), FitAnswer.of(assessment.fit(), units, "/fit", explanation),
                assessment.findings().stream().map(finding -> SettingFinding.of(finding, units)).toList(), settings,
                DoseTradeOff.of(assessment.choice(), duty, assessment.cost(), priced.currency(), units, "/tradeOff",
                        explanation),
                CycleTable.of(cycle, units), RefillSetting.of(cycle.step(CycleStep.Kind.REFILL), salt,
                        duty.water().temperatureCelsius(), units),
                assessment.readiness().stream().map(ReadinessCheck::of).toList(), Commissioning.steps(),
                YearComparison.of(assessment, store, units, explanation), worth,
                SoftenedWaterAnswer.of(assessment.softened(), units, "/softenedWater", explanation), explanation.cautions(),
                explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static void warn(Assessment assessment, SiteRequest site, Explanation explanation) {
        explanation.cautions(assessment.softened().cautions());
        explanation.caution(Caution.EFFICIENCY_NOT_CERTIFIED, Caution.SETTINGS_BEFORE_PARTS);
        explanation.cautions(Caution.OF_INSTALLATION);
        if (assessment.fit().largerThanNeeded()) {
            explanation.caution(Caution.BED_LARGER_THAN_NEEDED);
        }
        explanation.cautions(site.wasteWaterCautions());
        if (assessment.years().asFound().totals().hardDays() > 0
                || assessment.years().converted().totals().hardDays() > 0) {
            explanation.caution(Caution.RUNS_HARD);
        }
    }

    private static void explain(Assessment assessment, Salt salt, Explanation explanation) {
        assessment.findings().stream().map(Finding::code).forEach(code ->
                explanation.because("/findings", WireNames.of(code) + ": " + code.why(), code.sourceKey()));
        CycleTable.explain("/cycle", explanation);
        RefillSetting.explain("/refill", salt, explanation);
        explanation.because("/readiness", "what was seen on site; the drain against the backwash flow, the bore against 8 ft/s"
                + " at the peak flow, the resin against 10 to 15 years", "CP-INSTALLATION");
        explanation.because("/commissioning", "practice of putting a controller into service", "CP-INSTALLATION");
    }

    private static String summary(Assessment assessment, RecommendedSettings settings, ConversionWorth worth,
            AnswerUnits units) {
        String hard = "The water counts as " + Text.of(units.hardness(assessment.duty().hardness().totalMgPerL()))
                + "; the softener " + (assessment.fit().fits() ? "fits" : "does not fit: "
                + assessment.fit().shortcomings().get(0).sentence()) + ". ";
        String set = "Set " + Text.of(settings.hardness()) + ", " + Text.of(settings.capacity()) + " and "
                + Text.of(settings.saltDose()) + " with a reserve of " + Text.of(settings.reserve())
                + (settings.reserve().equals(settings.meterVolume()) ? ", all that the meter counts: it regenerates every night. "
                        : ". ");
        List<DoseChoice.Limit> unmet = assessment.choice().unmet(assessment.duty());
        if (!unmet.isEmpty()) {
            set += "No salt dose keeps to all limits: " + String.join(", and ", unmet.stream().map(DoseChoice.Limit::words)
                    .toList()) + ". ";
        }
        String paid = worth.payback() == null
                ? "The first year saves " + worth.firstYearSaving().total().value().toPlainString() + " "
                        + worth.firstYearSaving().total().unit() + "."
                : worth.payback().sentence().toString();
        return hard + set + paid;
    }
}
