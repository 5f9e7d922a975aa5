// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.regeneration.SaltPurchases;
import dev.brinebook.answer.regeneration.YearTotals;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.regeneration.SaltStore;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Message;
import java.time.LocalDate;

@SchemaDescription("Expected results of a year now, and of one with a meter. The salt purchases are an example. Their dates belong to "
        + "the measured days, or to one simulated year of many.")
public record YearComparison(
        @Property(value = "First day of the example.", example = "\"2026-01-01\"") LocalDate firstDate,
        @Property(value = "Days of the example.", min = 1, unit = "days", example = "365") Integer days,
        @Property("With the present settings.") YearTotals asFound,
        @Property("With a meter at the present salt dose: the effect of the meter alone.") YearTotals meteredAtFoundDose,
        @Property("With a meter and the recommended settings.") YearTotals metered,
        @Property("Salt saved with the recommended settings. Negative if they use more.") MassQuantity saltSaved,
        @Property("Water saved with the recommended settings. Negative if they use more.") VolumeQuantity waterSaved,
        @Property("Salt purchases with the present settings, as an example.") SaltPurchases saltAsFound,
        @Property("Salt purchases with the recommended settings, as an example.") SaltPurchases saltMetered) {

    static YearComparison of(Assessment assessment, SaltStore store, AnswerUnits units, Explanation explanation) {
        SoftenerSettings.Year found = assessment.years().asFound();
        SoftenerSettings.Year metered = assessment.years().converted();
        explanation.because("/year/days", Message.of("formula.assessment.wholeYearOrAll"), "DAIAD");
        explanation.because("/year/*/hardDaysRange", Message.of("formula.assessment.probabilityEachNumberHard"), "FELLER");
        explanation.because("/year/asFound", Message.of("formula.assessment.longRunHouseholdsDays"), "FELLER");
        explanation.because("/year/meteredAtFoundDose", Message.of("formula.assessment.sameCalculationExistingSalt"), "FELLER");
        explanation.because("/year/metered", Message.of("formula.assessment.sameCalculationMeterRecommended"), "FELLER");
        explanation.because("/year/saltSaved", Message.of("formula.assessment.saltNowSaltMeter"), "DAIAD");
        explanation.because("/year/waterSaved", Message.of("formula.assessment.regenerationWaterNowRegeneration"), "DAIAD");
        return new YearComparison(assessment.duty().days().firstDate(), assessment.duty().days().size(),
                YearTotals.of(found, units), YearTotals.of(assessment.years().metered(), units),
                YearTotals.of(metered, units),
                units.mass((found.totals().saltGrams() - metered.totals().saltGrams()) / 1000),
                units.volume(found.totals().waterLitres() - metered.totals().waterLitres()),
                SaltPurchases.of(found.onDays(), store, units, "/year/saltAsFound", explanation),
                SaltPurchases.of(metered.onDays(), store, units, "/year/saltMetered", explanation));
    }
}
