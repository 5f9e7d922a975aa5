package dev.brinebook.softener.api;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.caution.Caution;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.Finding;
import dev.brinebook.softener.Found;
import dev.brinebook.softener.Review;
import dev.brinebook.softener.Setup;
import dev.brinebook.water.api.HardnessLines;
import java.util.List;

/** What is wrong with the settings found on a softener. */
public final class ReviewSettings {

    public static final Operation<SettingsReviewRequest, SettingsReviewAnswer> OPERATION = new Operation<>(
            "reviewSettings", "/v1/settings-review", "Find what is set wrong on a softener",
            "Choose this when a softener wastes salt or lets hard water pass: it holds the hardness, capacity, salt,"
                    + " refill, reserve, override, interval, backwash and hour found on it against the water, the bed"
                    + " and the household, and says of each setting that should be another what to set, why, and what"
                    + " the difference costs in salt, water and hard days a year. To have the settings worked out"
                    + " anew, with what metering would save, choose assess; for the minutes of a regeneration alone"
                    + " designCycle.",
            SettingsReviewRequest.class, SettingsReviewAnswer.class, ReviewSettings::answer, List.of(),
            List.of("well-family", "apartment", "holiday-cabin"));

    private ReviewSettings() {
    }

    private static SettingsReviewAnswer answer(SettingsReviewRequest request) {
        AnswerUnits units = AnswerUnits.orDefault(request.units());
        Explanation explanation = new Explanation();
        SoftenerCase given = SoftenerCase.of(request, explanation);
        Duty duty = given.duty();
        Found found = request.softener().found(given, explanation);
        List<Finding> faults = Review.of(found, duty);
        List<SettingFinding> findings = faults.stream().map(finding -> SettingFinding.of(finding, units)).toList();
        Setup.Year year = found.setup().year(duty);
        explain(given, year, explanation);
        faults.stream().map(Finding::code).distinct().forEach(code ->
                explanation.because("/findings", WireNames.of(code) + ": " + code.why(), code.sourceKey()));
        return new SettingsReviewAnswer(explanation.behindStops(summary(findings)), findings,
                HardnessLines.of(duty.hardness(), duty.water().hardnessUncertaintyMgPerL(), units, "/hardness", explanation),
                units.capacity(duty.dailyLoadGrams()), units.saltDose(found.setup().saltDoseGramsPerLitre()),
                units.capacity(found.setup().capacityGrams()), YearTotals.of(year, units), explanation.cautions(),
                explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static String summary(List<SettingFinding> findings) {
        if (findings.isEmpty()) {
            return "The settings suit the water, the bed and the household.";
        }
        SettingFinding first = findings.get(0);
        String count = findings.size() == 1 ? "One setting should be changed: "
                : findings.size() + " settings should be changed; the gravest: ";
        return count + first.set() + " should be " + first.shouldBe() + ". " + first.why();
    }

    private static void explain(SoftenerCase given, Setup.Year year, Explanation explanation) {
        Duty duty = given.duty();
        explanation.cautions(duty.softenedWith(given.found().softener().salt()).cautions());
        explanation.cautions(Caution.OF_INSTALLATION);
        explanation.cautions(Caution.OF_DISCHARGE);
        if (year.totals().hardDays() > 0) {
            explanation.caution(Caution.RUNS_HARD);
        }
        explanation.because("/dailyLoad", "mean softened use times compensated hardness", "WQP-2009");
        explanation.because("/saltDose", "refill water times what a litre of water dissolves, over the resin volume; the dose"
                + " stated where minutes or flow of the refill are unknown", "SALT-INSTITUTE");
        CapacityBasis.explain("/capacity", given.found().softener().capacity(), "; a dose outside 3 to 20 lb/ft3 of sodium"
                + " chloride counts as the nearest end", explanation);
        explanation.because("/asFound", "a year of the household's days, decided each night, with bed and meter apart: "
                + Text.number(duty.days().size()) + " days", "DAIAD");
    }
}
