package dev.brinebook.answer.verdict;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.verdict.Improvement;
import dev.brinebook.verdict.Ladder;
import dev.brinebook.verdict.Rung;
import dev.brinebook.verdict.Step;
import dev.brinebook.verdict.Verdict;
import dev.brinebook.wording.Message;
import java.util.Currency;
import java.util.List;

@About("What to do, step by step, each step worth its own money: every step is held to the same service standard and against the"
        + " cheapest step below it, so that a meter is not credited with what correcting the settings saves. Equal questions get"
        + " the same verdict from every operation.")
public record VerdictAnswer(
        @Property(value = "The step to take.", example = "\"setRight\"") Step step,
        @Property(value = "Which improvement, where the step is improve.", optional = "unless the step is improve",
                example = "\"secondTank\"") Improvement improvement,
        @Property(value = "Which of the shop's goods, where the step is replace.", optional = "unless goods were named and the step is"
                + " replace", example = "\"S-150\"") String goods,
        @Property(value = "The verdict in one sentence, to quote.",
                example = "\"Correct the settings, free: 200 USD a year less.\"") Message sentence,
        @Property(value = "What to do.", example = "\"Set it to every 3 days with 9 lb/ft3 of salt.\"") Message action,
        @Property(value = "How sure it is.", example = "\"high\"") Verdict.Confidence confidence,
        @Property(value = "What would change it.", example = "[\"Converting pays if it costs less than 310 USD.\"]")
        List<Message> wouldChange,
        @Property("All steps, from the least to the most.") List<RungAnswer> ladder,
        @Property(value = "Improvements and goods that were looked at beside those of the ladder, each over the same step below.")
        List<RungAnswer> others,
        @Property(value = "What others report of conversions from a clock to a meter.", optional = "unless converting can be done")
        PublishedSaving published) {

    /** The verdict of a ladder, its basis below {@code pointer}. */
    public static VerdictAnswer of(Ladder ladder, Duty duty, RunningCost cost, Currency currency, AnswerUnits units, String pointer,
            Explanation explanation) {
        explanation.because(pointer + "/ladder", Message.of("each step in the long run, with the settings that cost least while the"
                + " service standard is kept; a step is taken when over the horizon it costs less in all than the cheapest below it, and"
                + " is then what the next is held against. Hard water has no price here"), "NIST-HB135");
        explanation.because(pointer + "/others", Message.of("worked out as the steps of the ladder; of several improvements or goods the"
                + " one that is worth most stands in it"), "NIST-HB135");
        explanation.because(pointer + "/ladder/*/firstCost", Message.of("cost and the prices of conditions that are not met, less"
                + " rebate"), "NIST-HB135");
        explanation.because(pointer + "/ladder/*/overBelow/paysPercent", Message.of("normal distribution of what is saved, by its mean"
                + " and its scatter over three levels of use and three hardnesses within the uncertainty of the test, settings kept"),
                "ABRAMOWITZ-STEGUN");
        ladder.treatments().forEach(treatment -> explanation.because(pointer + "/sentence", units.saying(treatment),
                treatment.sourceKey()));
        explanation.because(pointer + "/ladder/0/note", Message.of("a trial with 336 children with eczema found no benefit of softened"
                + " water; the studies of what scale costs in heaters were paid for by the trade, so it has no price here"), "SWET-2011");
        VerdictInWords words = new VerdictInWords(ladder, duty, cost, currency, units);
        Rung.What what = ladder.rung(ladder.verdict().step()).what();
        return new VerdictAnswer(ladder.verdict().step(), what.improvement().orElse(null), what.goods().orElse(null),
                words.sentence(), words.action(), ladder.verdict().confidence(),
                words.wouldChange(), ladder.rungs().stream().map(rung -> RungAnswer.of(rung,
                        rung.step() == Step.NONE_NEEDED ? words.withoutSoftening() : null, currency, units)).toList(),
                ladder.others().stream().map(rung -> RungAnswer.of(rung, null, currency, units)).toList(),
                ladder.rung(Step.CONVERT).option().isPresent() ? PublishedSaving.of(pointer + "/published", explanation) : null);
    }
}
