// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.payback.MeteringWorthAnswer;
import dev.brinebook.answer.payback.MoneyLines;
import dev.brinebook.answer.payback.PaybackFigures;
import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.model.Model;
import dev.brinebook.model.ModelChange;
import dev.brinebook.payback.ConvertedYears;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.RetrofitPayback;
import dev.brinebook.request.softener.RetrofitRequest;
import dev.brinebook.softener.Readiness;
import dev.brinebook.softener.SoftenerSettings;
import java.util.Currency;

@SchemaDescription("Benefit of converting.")
public record RetrofitWorth(
        @Basis(formula = "formula.assessment.saltWaterNowSalt", source = "NIST-HB135")
        @From({"/year/saltSaved", "/year/waterSaved"})
        @Property("Saving in the first year with the recommended settings, at today's prices.") MoneyLines firstYearSaving,
        @Basis(formula = "formula.assessment.sameCalculationMeterExisting", source = "NIST-HB135")
        @Property("Saving from the meter alone, at the present salt dose. The rest comes from the new dose.")
        MoneyLines savedByMeteringAlone,
        @Basis(formula = "formula.softener.clockMeterSameBed", source = "FELLER")
        @Basis(formula = "formula.softener.evidenceMeteredHomes24", source = "DAIAD")
        @Property("Saving of a meter over the same clock with correct settings, as a range.") MeteringWorthAnswer overClockSetRight,
        @Property(value = "Payback of the conversion over the step below it or over the present settings, whichever saves less, as the "
                + "verdict states it.", optional = "when the cost of the conversion is not given")
        PaybackFigures payback) {

    static RetrofitWorth of(Assessment assessment, RetrofitRequest request, Readiness.Cost unmet, Prices prices,
            Currency currency, AnswerUnits units, Model model, Explanation explanation) {
        ConvertedYears years = assessment.years();
        SoftenerSettings.Year before = model.has(ModelChange.PAYBACK_OVER_THE_STEP_BELOW) ? assessment.belowConverting() : years.asFound();
        PaybackFigures figures = request == null ? null : PaybackFigures.of(RetrofitPayback.of(
                request.toDomain(ConvertedYears.use(before), ConvertedYears.use(years.converted()), unmet, explanation),
                prices), prices, currency);
        return new RetrofitWorth(MoneyLines.of(years.saved(prices), currency),
                MoneyLines.of(years.savedByMetering(prices), currency), MeteringWorthAnswer.of(
                        assessment.ladder().worth().orElseThrow(), assessment.duty(), currency, units), figures);
    }
}
