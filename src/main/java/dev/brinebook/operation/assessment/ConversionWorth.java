package dev.brinebook.operation.assessment;

import dev.brinebook.answer.payback.MeteringWorthAnswer;
import dev.brinebook.answer.payback.MoneyLines;
import dev.brinebook.answer.payback.PaybackFigures;
import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.payback.ConversionPayback;
import dev.brinebook.payback.ConvertedYears;
import dev.brinebook.payback.Prices;
import dev.brinebook.request.softener.ConversionRequest;
import dev.brinebook.softener.Readiness;
import dev.brinebook.wording.Message;
import java.util.Currency;

@About("What converting is worth.")
public record ConversionWorth(
        @Property("Saving of the first year by the recommended settings, at today's prices.") MoneyLines firstYearSaving,
        @Property("What metering alone saves, with the salt dose as found; the rest is the dose.")
        MoneyLines savedByMeteringAlone,
        @Property("What the meter saves over the same clock set right, as a range.") MeteringWorthAnswer overClockSetRight,
        @Property(value = "Payback of the conversion.", optional = "when the cost of the conversion is not given")
        PaybackFigures payback) {

    static ConversionWorth of(Assessment assessment, ConversionRequest request, Readiness.Cost unmet, Prices prices,
            Currency currency, AnswerUnits units, Explanation explanation) {
        explanation.because("/conversion/firstYearSaving", Message.of("salt and water as found less salt and water"
                + " with the recommended settings, at today's prices"), "NIST-HB135");
        explanation.because("/conversion/savedByMeteringAlone", Message.of("the same with a meter at the salt dose as"
                + " found"), "NIST-HB135");
        ConvertedYears years = assessment.years();
        PaybackFigures figures = request == null ? null : PaybackFigures.of(ConversionPayback.of(
                request.toDomain(ConvertedYears.use(years.asFound()), ConvertedYears.use(years.converted()), unmet, explanation),
                prices), prices, currency, "/conversion/payback", explanation);
        return new ConversionWorth(MoneyLines.of(years.saved(prices), currency),
                MoneyLines.of(years.savedByMetering(prices), currency), MeteringWorthAnswer.of(
                        assessment.ladder().worth().orElseThrow(), assessment.duty(), currency, units, "/conversion/overClockSetRight",
                        explanation), figures);
    }
}
