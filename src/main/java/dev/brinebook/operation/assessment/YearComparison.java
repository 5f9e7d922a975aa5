// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.regeneration.SaltPurchases;
import dev.brinebook.answer.regeneration.Saving;
import dev.brinebook.answer.regeneration.YearTotals;
import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.model.Model;
import dev.brinebook.regeneration.SaltStore;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Message;
import java.time.LocalDate;

@SchemaDescription("Expected results of a year now, and of one with a meter. The salt purchases are an example. Their dates belong to "
        + "the measured days, or to one simulated year of many.")
public record YearComparison(
        @Property(value = "First day of the example.", example = "\"2026-01-01\"") LocalDate firstDate,
        @Basis(formula = "formula.assessment.wholeYearOrAll", source = "DAIAD")
        @Property(value = "Days of the example.", min = 1, unit = "days", example = "365") Integer days,
        @Basis(formula = "formula.assessment.longRunHouseholdsDays", source = "FELLER")
        @Property("With the present settings.") YearTotals asFound,
        @Basis(formula = "formula.assessment.sameCalculationExistingSalt", source = "FELLER")
        @Property("With a meter at the present salt dose: the effect of the meter alone.") YearTotals meteredAtFoundDose,
        @Basis(formula = "formula.assessment.sameCalculationMeterRecommended", source = "FELLER")
        @Property("With a meter and the recommended settings.") YearTotals metered,
        @Basis(formula = "formula.assessment.saltNowSaltMeter", source = "DAIAD")
        @From({"asFound/salt", "metered/salt"})
        @Property("Salt saved with the recommended settings. Negative if they use more.") MassQuantity saltSaved,
        @Basis(formula = "formula.assessment.regenerationWaterNowRegeneration", source = "DAIAD")
        @From({"asFound/water", "metered/water"})
        @Property("Water saved with the recommended settings. Negative if they use more.") VolumeQuantity waterSaved,
        @Property("Salt purchases with the present settings, as an example.") SaltPurchases saltAsFound,
        @Property("Salt purchases with the recommended settings, as an example.") SaltPurchases saltMetered) {

    /** How the salt and water of each year come from its regenerations. */
    static void explain(Assessment assessment, AnswerUnits units, Explanation explanation) {
        explain("/year/asFound", assessment.fit().dosed(), units, explanation);
        explain("/year/meteredAtFoundDose", assessment.fit().dosed(), units, explanation);
        explain("/year/metered", assessment.recommended().dosed(), units, explanation);
    }

    private static void explain(String pointer, DosedSoftener dosed, AnswerUnits units, Explanation explanation) {
        explanation.because(pointer + "/salt", Message.of("formula.assessment.regenerationsSaltPer",
                Text.of(units.mass(dosed.saltGrams() / 1000))), "WQP-2009");
        explanation.because(pointer + "/water", Message.of("formula.assessment.regenerationsWaterPer",
                Text.of(units.volume(dosed.cycle().waterLitres()))), "CP-CYCLE");
    }

    static YearComparison of(Assessment assessment, SaltStore store, AnswerUnits units, Model model) {
        SoftenerSettings.Year found = assessment.years().asFound();
        SoftenerSettings.Year metered = assessment.years().converted();
        return new YearComparison(assessment.duty().days().firstDate(), assessment.duty().days().size(),
                YearTotals.of(found, units), YearTotals.of(assessment.years().metered(), units),
                YearTotals.of(metered, units),
                units.mass(Saving.of(found.totals().saltGrams(), metered.totals().saltGrams(), model) / 1000),
                units.volume(Saving.of(found.totals().waterLitres(), metered.totals().waterLitres(), model)),
                SaltPurchases.of(found.onDays(), store, units),
                SaltPurchases.of(metered.onDays(), store, units));
    }
}
