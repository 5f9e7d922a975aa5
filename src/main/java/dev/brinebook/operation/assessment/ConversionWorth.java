// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.payback.MeteringWorthAnswer;
import dev.brinebook.answer.payback.MoneyLines;
import dev.brinebook.answer.payback.PaybackFigures;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.payback.ConvertedYears;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.RetrofitPayback;
import dev.brinebook.request.softener.ConversionRequest;
import dev.brinebook.softener.Readiness;
import dev.brinebook.text.Message;
import java.util.Currency;

@SchemaDescription("Benefit of converting.")
public record ConversionWorth(
        @Property("Saving in the first year with the recommended settings, at today's prices.") MoneyLines firstYearSaving,
        @Property("Saving from the meter alone, at the present salt dose. The rest comes from the new dose.")
        MoneyLines savedByMeteringAlone,
        @Property("Saving of a meter over the same clock with correct settings, as a range.") MeteringWorthAnswer overClockSetRight,
        @Property(value = "Payback of the conversion.", optional = "when the cost of the conversion is not given")
        PaybackFigures payback) {

    static ConversionWorth of(Assessment assessment, ConversionRequest request, Readiness.Cost unmet, Prices prices,
            Currency currency, AnswerUnits units, Explanation explanation) {
        explanation.because("/conversion/firstYearSaving", Message.of("formula.assessment.saltWaterNowSalt"), "NIST-HB135");
        explanation.because("/conversion/savedByMeteringAlone", Message.of("formula.assessment.sameCalculationMeterExisting"),
                "NIST-HB135");
        ConvertedYears years = assessment.years();
        PaybackFigures figures = request == null ? null : PaybackFigures.of(RetrofitPayback.of(
                request.toDomain(ConvertedYears.use(years.asFound()), ConvertedYears.use(years.converted()), unmet, explanation),
                prices), prices, currency, "/conversion/payback", explanation);
        return new ConversionWorth(MoneyLines.of(years.saved(prices), currency),
                MoneyLines.of(years.savedByMetering(prices), currency), MeteringWorthAnswer.of(
                        assessment.ladder().worth().orElseThrow(), assessment.duty(), currency, units, "/conversion/overClockSetRight",
                        explanation), figures);
    }
}
