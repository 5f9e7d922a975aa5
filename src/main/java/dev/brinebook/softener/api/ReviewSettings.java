package dev.brinebook.softener.api;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Text;
import dev.brinebook.caution.Caution;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.Finding;
import dev.brinebook.softener.Found;
import dev.brinebook.softener.Review;
import dev.brinebook.softener.Setup;
import dev.brinebook.water.api.HardnessLines;
import dev.brinebook.wording.Message;
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
        Explanation explanation = units.explanation();
        SoftenerCase given = SoftenerCase.of(request, explanation);
        Duty duty = given.duty();
        Found found = request.softener().found(given, explanation);
        List<Finding> faults = Review.of(found, duty);
        List<SettingFinding> findings = faults.stream().map(finding -> SettingFinding.of(finding,
                found.setup().softener(), duty, units)).toList();
        Setup.Year year = found.setup().year(duty);
        explain(given, year, units, explanation);
        SettingFinding.explain(faults, units, "/findings", explanation);
        return new SettingsReviewAnswer(explanation.behindStops(summary(findings)), findings,
                HardnessLines.of(duty.hardness(), duty.water().hardnessUncertaintyMgPerL(), duty.controller().hardness(), units,
                        "/hardness", explanation),
                units.capacity(duty.dailyLoadGrams()), units.saltDose(found.setup().saltDoseGramsPerLitre()),
                units.capacity(found.setup().capacityGrams()), YearTotals.of(year, units), explanation.cautions(),
                explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static Message summary(List<SettingFinding> findings) {
        if (findings.isEmpty()) {
            return Message.of("The settings suit the water, the bed and the household.");
        }
        SettingFinding first = findings.get(0);
        return Message.joined(" ", List.of(Message.counted("One setting should be changed: {1} should be {2}.",
                "{0} settings should be changed; the gravest: {1} should be {2}.", findings.size(), first.set(),
                first.shouldBe()), first.why()));
    }

    private static void explain(SoftenerCase given, Setup.Year year, AnswerUnits units,
            Explanation explanation) {
        Duty duty = given.duty();
        explanation.cautions(duty.softenedWith(given.found().softener().salt()).cautions());
        explanation.cautions(Caution.OF_INSTALLATION);
        explanation.cautions(Caution.OF_DISCHARGE);
        if (year.totals().hardDays() > 0) {
            explanation.caution(Caution.RUNS_HARD);
        }
        explanation.because("/dailyLoad", Message.of("mean softened use times compensated hardness"), "WQP-2009");
        CapacityBasis.explainFoundDose("/saltDose", explanation);
        CapacityModel capacity = given.found().softener().capacity();
        CapacityBasis.explain("/capacity", capacity, units, explanation);
        explanation.because("/capacity", Message.of("a dose outside {0} to {1} of sodium chloride counts as the nearest end",
                Text.number(units.saltDose(CapacityTable.MIN_SALT_DOSE_GRAMS_PER_LITRE).value().doubleValue()),
                Text.of(units.saltDose(CapacityTable.MAX_SALT_DOSE_GRAMS_PER_LITRE))), capacity.sourceKey());
        explanation.because("/asFound", Message.counted("a year of the household's days, decided each night, with bed and meter"
                + " apart: {0} day", "a year of the household's days, decided each night, with bed and meter apart: {0} days",
                duty.days().size()), "DAIAD");
    }
}
