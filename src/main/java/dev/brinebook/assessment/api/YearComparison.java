package dev.brinebook.assessment.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.MassQuantity;
import dev.brinebook.quantity.api.VolumeQuantity;
import dev.brinebook.regeneration.SaltStore;
import dev.brinebook.regeneration.api.SaltPurchases;
import dev.brinebook.softener.Setup;
import dev.brinebook.softener.api.YearTotals;
import dev.brinebook.wording.Message;
import java.time.LocalDate;

@About("A year as found against a year metered, on the same days.")
public record YearComparison(
        @Property(value = "First day.", example = "\"2026-01-01\"") LocalDate firstDate,
        @Property(value = "Days looked at; totals are for 365.", min = 1, unit = "days", example = "365") Integer days,
        @Property("As found.") YearTotals asFound,
        @Property("Metered, with the salt dose as found: what metering alone changes.") YearTotals meteredAtFoundDose,
        @Property("Metered, with the recommended settings.") YearTotals metered,
        @Property("Salt saved by the recommended settings; negative where they take more.") MassQuantity saltSaved,
        @Property("Water saved by the recommended settings; negative where they take more.") VolumeQuantity waterSaved,
        @Property("Salt to buy as found.") SaltPurchases saltAsFound,
        @Property("Salt to buy with the recommended settings.") SaltPurchases saltMetered) {

    static YearComparison of(Assessment assessment, SaltStore store, AnswerUnits units, Explanation explanation) {
        Setup.Year found = assessment.years().asFound();
        Setup.Year metered = assessment.years().converted();
        explanation.because("/year/days", Message.of("a whole year, or all the days that were measured"), "DAIAD");
        explanation.because("/year/asFound", Message.of("every night the control decides by what it knows; the bed, counted"
                + " apart, is exhausted or not"), "DAIAD");
        explanation.because("/year/meteredAtFoundDose", Message.of("the same days and dose under a meter with the recommended"
                + " reserve and override"), "DAIAD");
        explanation.because("/year/metered", Message.of("the same days under a meter with the recommended settings"), "DAIAD");
        explanation.because("/year/saltSaved", Message.of("salt as found less salt metered"), "DAIAD");
        explanation.because("/year/waterSaved", Message.of("regeneration water as found less metered"), "DAIAD");
        return new YearComparison(assessment.duty().days().firstDate(), assessment.duty().days().size(),
                YearTotals.of(found, units), YearTotals.of(assessment.years().metered(), units),
                YearTotals.of(metered, units),
                units.mass((found.totals().saltGrams() - metered.totals().saltGrams()) / 1000),
                units.volume(found.totals().waterLitres() - metered.totals().waterLitres()),
                SaltPurchases.of(found.outcome(), store, units, "/year/saltAsFound", explanation),
                SaltPurchases.of(metered.outcome(), store, units, "/year/saltMetered", explanation));
    }
}
