// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.assessment;

import dev.brinebook.payback.ConvertedYears;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.softener.Finding;
import dev.brinebook.softener.Fit;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.Question;
import dev.brinebook.softener.Review;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.verdict.Ladder;
import dev.brinebook.verdict.Step;
import dev.brinebook.verdict.Terms;
import dev.brinebook.water.SoftenedWater;
import java.util.List;
import java.util.Map;

/**
 * The practitioner's whole job on one case: every part from the same water, days and bed, so that none contradicts
 * another.
 *
 * @param duty what the softener is there to do
 * @param found the existing softener
 * @param fit whether it fits, at the dose it gets
 * @param findings settings to change, as one path to the same control set right
 * @param questions settings that were not read and matter
 * @param choice how the dose to set was chosen
 * @param cost what salt and water cost
 * @param years a year with the present settings, metered at the present dose, and with the recommended settings
 * @param ladder what to do, step by step
 * @param softened what softening adds to the water
 */
public record Assessment(DesignConditions duty, ExistingSoftener found, Fit fit, List<Finding> findings, List<Question> questions,
        DoseChoice choice,
        RunningCost cost, ConvertedYears years, Ladder ladder, SoftenedWater softened) {

    public Assessment {
        findings = List.copyOf(findings);
        questions = List.copyOf(questions);
    }

    /** The dose and meter settings to set, with their year. */
    public DoseChoice.Option recommended() {
        return choice.best();
    }

    /** A year of what converting is compared with: the present control, set right or as found, whichever leaves less to save. */
    public SoftenerSettings.Year belowConverting() {
        return isConvertedFromRight() ? ladder.right().orElseThrow().setup().year(duty) : years.asFound();
    }

    boolean isConvertedFromRight() {
        return ladder.rung(Step.CONVERT).counted().filter(over -> over.over() == Step.SET_RIGHT).isPresent();
    }

    /** Why the softener does not fit, whatever is set on it; empty where it does. */
    public List<Fit.Shortcoming> shortcomings() {
        return ladder.shortcomings(fit);
    }

    /** Calculates the case. */
    public static Assessment of(ExistingSoftener found, DesignConditions duty, Terms terms) {
        SoftenerSettings setup = found.setup();
        Fit fit = found.fit(duty);
        Ladder ladder = Ladder.of(found, duty, terms);
        DoseChoice choice = ladder.choice().orElseThrow();
        DoseChoice.Option recommended = choice.best();
        SoftenerSettings converted = new SoftenerSettings(recommended.dosed().softener(), recommended.dosed().saltDoseGramsPerLitre(),
                Map.of(),
                recommended.settings().policy(), MeterSettings.REGENERATION_HOUR);
        Policy meterAtFoundDose = MeterSettings.of(fit.dosed(), duty, recommended.settings().start()).policy();
        return new Assessment(duty, found, fit, Review.path(found, ladder.right().orElseThrow(), duty, terms.running()).findings(),
                ladder.questions(), choice, terms.running(),
                ConvertedYears.of(setup, meterAtFoundDose, converted, duty), ladder,
                duty.softenedWith(setup.softener().salt()));
    }
}
