// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.softener;

import dev.brinebook.answer.regeneration.YearTotals;
import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.answer.softener.ControllerQuantities;
import dev.brinebook.answer.softener.SettingFinding;
import dev.brinebook.answer.softener.SettingQuestion;
import dev.brinebook.answer.softener.SiteReadiness;
import dev.brinebook.answer.verdict.VerdictAnswer;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.caution.Caution;
import dev.brinebook.model.Model;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.softener.RetrofitRequest;
import dev.brinebook.request.softener.SiteRequest;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.softener.BedUncertainty;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.softener.Finding;
import dev.brinebook.softener.Question;
import dev.brinebook.softener.Review;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Ladder;
import dev.brinebook.verdict.Step;
import dev.brinebook.verdict.Terms;
import dev.brinebook.water.WaterAnalysis.Supply;
import dev.brinebook.water.WaterCautions;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Errors in the settings of a softener. */
public final class ReviewSettings {

    public static final Operation<SettingsReviewRequest, SettingsReviewAnswer> OPERATION = new Operation<>(
            "reviewSettings", "/v1/settings-review", "Review the settings of a softener",
            "Choose this when a softener wastes salt or lets hard water pass. It compares the hardness, capacity, salt, refill, "
                    + "reserve, day override, interval, backwash and hour set on it with correct settings for the same control. It "
                    + "gives one path of settings to change: what to set, why, and the effect of each on salt, water and hard days per "
                    + "year, after the preceding ones. It asks for settings that were not given but affect the result. For the saving "
                    + "from a meter choose assess. For the minutes of a regeneration alone choose designCycle.",
            SettingsReviewRequest.class, SettingsReviewAnswer.class, ReviewSettings::answer, List.of(),
            List.of("well-family", "apartment", "holiday-cabin"));

    private static final MathContext FOR_PEOPLE = new MathContext(3);

    private ReviewSettings() {
    }

    private static SettingsReviewAnswer answer(SettingsReviewRequest request, Model model) {
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        Explanation explanation = HomeCountry.explanation(units, request.household().country());
        explanation.caution(HomeCountry.airGap(request.household().country()));
        SoftenerCase given = SoftenerCase.of(request, model, explanation);
        DesignConditions duty = given.duty();
        ExistingSoftener found = request.softener().resolved(model).found(given, explanation);
        LocalPrices priced = LocalPrices.of(request.prices(), request.household());
        boolean ownWell = duty.water().supply() == Supply.PRIVATE_WELL;
        Terms terms = RetrofitRequest.terms(request.retrofit(), SiteReadiness.of(request.site(), request.softener(), found, duty,
                explanation).cost(), priced.toDomain(ownWell, SiteRequest.orUnseen(request.site()).ownSewage(duty.water().supply()),
                explanation), request, given);
        Ladder ladder = Ladder.of(found, duty, terms);
        boolean untreated = ladder.verdict().step() == Step.TREAT_FIRST;
        Review review = untreated ? Review.none(found, duty)
                : Review.path(found, ladder.right().orElseThrow(), duty, terms.running());
        List<Question> questions = untreated ? List.of() : ladder.questions();
        List<SettingFinding> findings = review.findings().stream().map(finding -> SettingFinding.of(finding,
                given.found().softener(), duty, units)).toList();
        explain(given, review.asFound(), units, explanation);
        SettingFinding.explain(review.findings(), units, "/findings", explanation);
        BedUncertainty bed = request.softener().bedUncertainty();
        VerdictAnswer verdict = VerdictAnswer.of(ladder, duty, terms.running(), priced.currency(), units, "/verdict", explanation);
        return new SettingsReviewAnswer(explanation.behindStops(untreated ? verdict.sentence()
                : summary(review, questions, found, duty, units)), verdict, findings,
                questions.stream().map(question -> SettingQuestion.of(question, given.found().softener(), duty, units)).toList(),
                HardnessLines.of(duty.hardness(), duty.water().hardnessUncertaintyMgPerL(), duty.controller().hardness(), units,
                        "/hardness", explanation),
                units.capacity(duty.dailyLoadGrams()), units.saltDose(found.setup().saltDoseGramsPerLitre()),
                units.capacity(found.setup().capacityGrams()), YearTotals.of(review.asFound(), units),
                YearTotals.of(review.corrected(), units), range(untreated, found, bed.ofResin(), duty, terms, units),
                range(untreated, found, bed.ofSalt(), duty, terms, units), explanation.cautions(), explanation.assumptions(),
                explanation.basis(),
                ModelVersion.CURRENT);
    }

    private static ReviewRangeAnswer range(boolean untreated, ExistingSoftener found, BedUncertainty uncertainty, DesignConditions duty,
            Terms terms, AnswerUnits units) {
        return untreated ? null : ReviewRangeAnswer.of(found, uncertainty, duty, terms.running(), units);
    }

    private static Message summary(Review review, List<Question> questions, ExistingSoftener found, DesignConditions duty,
            AnswerUnits units) {
        List<Message> sentences = new ArrayList<>();
        if (!review.findings().isEmpty()) {
            Finding first = mostImportant(review.findings());
            sentences.add(toChange(first, (int) review.findings().stream().map(Finding::setting).distinct().count(), found, duty, units));
            sentences.add(units.saying(first.code()));
        } else {
            sentences.add(questions.isEmpty() ? Message.of("reviewSettings.noSettingWorthChanging")
                    : Message.of("reviewSettings.noKnownSettingWorthChanging"));
        }
        if (!questions.isEmpty()) {
            sentences.add(Message.of("reviewSettings.oneMoreSettingMatters", questions.size(),
                    units.saying(questions.get(0).setting())));
        }
        return Message.sentences(sentences);
    }

    /** The first finding of the first step that holds one of the greatest weight. */
    private static Finding mostImportant(List<Finding> findings) {
        int step = findings.stream().min(Comparator.comparing(finding -> finding.code().severity())).orElseThrow().step();
        return findings.stream().filter(finding -> finding.step() == step).findFirst().orElseThrow();
    }

    private static Message toChange(Finding first, int settings, ExistingSoftener found, DesignConditions duty, AnswerUnits units) {
        ControllerQuantities controller = new ControllerQuantities(duty, units);
        Message name = units.saying(first.setting());
        Message set = SettingFinding.text(first.setting(), first.set(), found.setup().softener(), controller);
        Message shouldBe = SettingFinding.text(first.setting(), first.shouldBe(), found.setup().softener(), controller);
        long hardDays = Math.round(first.difference().hardDays());
        MassQuantity salt = units.mass(first.difference().saltKilograms());
        if (hardDays > 1) {
            return Message.of("reviewSettings.changeSettingsMostImportant", settings, name, set, shouldBe, hardDays);
        }
        if (first.code().purpose() == Finding.Purpose.SAVE && salt.value().signum() > 0) {
            return Message.of("reviewSettings.changeSettingsMostImportantSaves", settings, name, set, shouldBe,
                    Text.measure(Rounding.significant(salt.value().doubleValue(), FOR_PEOPLE), salt.unit().symbol()));
        }
        return Message.of("reviewSettings.changeSettingsMostImportant2", settings, name, set, shouldBe);
    }

    private static void explain(SoftenerCase given, SoftenerSettings.Year year, AnswerUnits units,
            Explanation explanation) {
        DesignConditions duty = given.duty();
        explanation.cautions(duty.softenedWith(given.found().softener().salt()).cautions());
        explanation.cautions(Caution.OF_INSTALLATION);
        explanation.cautions(WaterCautions.ofDischarge(duty.water().supply()));
        if (year.totals().hardDays() > 0) {
            explanation.caution(Caution.RUNS_HARD);
        }
        CapacityModel capacity = given.found().softener().capacity();
        CapacityBasis.explain("/capacity", capacity, units, explanation);
        explanation.because("/capacity", Message.of("formula.softener.doseOutsideSodiumChloride",
                Text.number(units.saltDose(CapacityTable.MIN_SALT_DOSE_GRAMS_PER_LITRE).value().doubleValue()),
                Text.of(units.saltDose(CapacityTable.MAX_SALT_DOSE_GRAMS_PER_LITRE))), capacity.sourceKey());
        explanation.because("/asFound", Message.of("formula.softener.yearHouseholdsDaysDecided",
                duty.days().size()), "DAIAD");
    }
}
