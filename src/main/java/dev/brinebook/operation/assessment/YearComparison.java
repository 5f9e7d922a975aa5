package dev.brinebook.operation.assessment;

import dev.brinebook.answer.regeneration.SaltPurchases;
import dev.brinebook.answer.regeneration.YearTotals;
import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.regeneration.SaltStore;
import dev.brinebook.softener.Setup;
import dev.brinebook.wording.Message;
import java.time.LocalDate;

@About("What is to be expected of a year as found, and of one metered. The purchases of salt are an example: their dates are those of"
        + " the days as measured, or of one year among many.")
public record YearComparison(
        @Property(value = "First day of the example.", example = "\"2026-01-01\"") LocalDate firstDate,
        @Property(value = "Days of the example.", min = 1, unit = "days", example = "365") Integer days,
        @Property("As found.") YearTotals asFound,
        @Property("Metered, with the salt dose as found: what metering alone changes.") YearTotals meteredAtFoundDose,
        @Property("Metered, with the recommended settings.") YearTotals metered,
        @Property("Salt saved by the recommended settings; negative where they take more.") MassQuantity saltSaved,
        @Property("Water saved by the recommended settings; negative where they take more.") VolumeQuantity waterSaved,
        @Property("Salt to buy as found, as an example.") SaltPurchases saltAsFound,
        @Property("Salt to buy with the recommended settings, as an example.") SaltPurchases saltMetered) {

    static YearComparison of(Assessment assessment, SaltStore store, AnswerUnits units, Explanation explanation) {
        Setup.Year found = assessment.years().asFound();
        Setup.Year metered = assessment.years().converted();
        explanation.because("/year/days", Message.of("a whole year, or all the days that were measured"), "DAIAD");
        explanation.because("/year/*/hardDaysRange", Message.of("chance of each number of hard days in a year"), "FELLER");
        explanation.because("/year/asFound", Message.of("the long run of the household's days by a renewal table; the bed,"
                + " counted apart, is used up or not"), "FELLER");
        explanation.because("/year/meteredAtFoundDose", Message.of("the same at that dose under a meter with the smallest"
                + " reserve that keeps to the service standard"), "FELLER");
        explanation.because("/year/metered", Message.of("the same under a meter with the recommended settings"), "FELLER");
        explanation.because("/year/saltSaved", Message.of("salt as found less salt metered"), "DAIAD");
        explanation.because("/year/waterSaved", Message.of("regeneration water as found less metered"), "DAIAD");
        return new YearComparison(assessment.duty().days().firstDate(), assessment.duty().days().size(),
                YearTotals.of(found, units), YearTotals.of(assessment.years().metered(), units),
                YearTotals.of(metered, units),
                units.mass((found.totals().saltGrams() - metered.totals().saltGrams()) / 1000),
                units.volume(found.totals().waterLitres() - metered.totals().waterLitres()),
                SaltPurchases.of(found.onDays(), store, units, "/year/saltAsFound", explanation),
                SaltPurchases.of(metered.onDays(), store, units, "/year/saltMetered", explanation));
    }
}
