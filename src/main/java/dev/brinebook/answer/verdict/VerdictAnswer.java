// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.verdict;

import dev.brinebook.answer.softener.ControllerQuantities;
import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Improvement;
import dev.brinebook.verdict.Ladder;
import dev.brinebook.verdict.Rung;
import dev.brinebook.verdict.Step;
import dev.brinebook.verdict.Verdict;
import java.util.Currency;
import java.util.List;

@SchemaDescription("What to do, step by step. Every step must meet the same service standard and is compared with the cheapest step "
        + "below it. So a meter is not credited with the saving from correct settings. Every operation gives the same verdict for the "
        + "same case.")
public record VerdictAnswer(
        @Property(value = "The recommended step.", example = "\"setRight\"") Step step,
        @Property(value = "Name of the improvement, if the step is improve.", optional = "unless the step is improve",
                example = "\"secondTank\"") Improvement improvement,
        @Property(value = "Name of the product from your list, if the step is replace.", optional = "unless "
                + "products were given and the step is replace", example = "\"S-150\"") String goods,
        @Property(value = "The verdict in one sentence, to quote.",
                example = "\"Correct the settings, free: 200 USD a year less.\"") Message sentence,
        @Property(value = "Recommended action.", example = "\"Set it to every 3 days with 9 lb/ft3 of salt.\"") Message action,
        @Property(value = "Confidence in the verdict.", example = "\"high\"") Verdict.Confidence confidence,
        @Property(value = "What would change the verdict.", example = "[\"Converting pays if it costs less than 310 USD.\"]",
                maxItems = VerdictAnswer.MOST_CHANGES)
        List<Message> wouldChange,
        @Basis(formula = "formula.verdict.eachStepLongRun", source = "NIST-HB135")
        @Property(value = "All steps, from the smallest to the largest change.", eachOf = Step.class) List<RungAnswer> ladder,
        @Basis(formula = "formula.verdict.calculatedLikeStepsCompared", source = "NIST-HB135")
        @Property(value = "Further improvements and products that were compared, each with the same step below.",
                maxItems = VerdictAnswer.MOST_OTHERS)
        List<RungAnswer> others,
        @Basis(formula = "formula.verdict.publishedFiguresMeteredControls", source = "WT-2014-DEMAND")
        @Property(value = "Published savings of conversions from a clock to a meter.", optional = "unless converting is possible")
        PublishedSaving published) {

    /** A setting that was not read, each; and what the costs, the use and the conditions may be. */
    static final int MOST_CHANGES = 16;
    /** Every improvement and every product of an offer but the best. */
    static final int MOST_OTHERS = 16;

    /** The verdict of a ladder; what it says of treating first has its sources below {@code pointer}. */
    public static VerdictAnswer of(Ladder ladder, DesignConditions duty, RunningCost cost, Currency currency, AnswerUnits units,
            String pointer,
            Explanation explanation) {
        ladder.treatments().forEach(treatment -> explanation.because(pointer + "/sentence", units.saying(treatment),
                treatment.sourceKey()));
        VerdictInWords words = new VerdictInWords(ladder, duty, cost, currency, explanation);
        ControllerQuantities set = new ControllerQuantities(duty, units);
        Rung.What what = ladder.rung(ladder.verdict().step()).what();
        return new VerdictAnswer(ladder.verdict().step(), what.improvement().orElse(null), what.goods().orElse(null),
                words.sentence(), words.action(), ladder.verdict().confidence(),
                words.wouldChange(), ladder.rungs().stream().map(rung -> RungAnswer.of(rung,
                        rung.step() == Step.NONE_NEEDED ? words.withoutSoftening() : null, currency, set)).toList(),
                ladder.others().stream().map(rung -> RungAnswer.of(rung, null, currency, set)).toList(),
                ladder.rung(Step.CONVERT).option().isPresent() ? PublishedSaving.of() : null);
    }
}
