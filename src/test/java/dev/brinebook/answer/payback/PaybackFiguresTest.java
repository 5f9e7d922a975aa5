package dev.brinebook.answer.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.FigureAnswer;
import dev.brinebook.guard.Figure;
import dev.brinebook.guard.NoAnswer;
import dev.brinebook.payback.Conversion;
import dev.brinebook.payback.ConversionPayback;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.RateOfReturn;
import dev.brinebook.payback.YearlyUse;
import java.math.BigDecimal;
import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PaybackFiguresTest {

    private static final Currency EURO = Currency.getInstance("EUR");
    private static final Prices UNIT = new Prices(1, 0, 0, 0, 0, 0.05);

    /**
     * Savings that keep their sign cannot bring several rates about, so such flows are put in by hand.
     * Source: numeric library documentation, -100, 100, 0, -7 has two sign changes and the rate -8.33 %.
     */
    @Test
    void flagsFlowsThatMayHaveSeveralRates() {
        ConversionPayback one = payback(0.9, 350);
        ConversionPayback several = new ConversionPayback(one.investment(), one.yearlySaving(), one.simplePaybackYears(),
                one.discountedPaybackYears(), one.netPresentValue(), RateOfReturn.of(-100, 100, 0, -7),
                one.savingsToInvestmentRatio(), one.adjustedRateOfReturn(), one.cashFlows());
        PaybackFigures figures = figures(several);
        assertTrue(figures.severalRates());
        assertEquals(2, figures.signChanges());
        assertEquals(-8.33, figures.internalRateOfReturnPercent().value().doubleValue(), 0.005);
        assertFalse(figures(one).severalRates());
        assertEquals(1, figures(one).signChanges());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            84   | 150  | Converting saves 84.00 EUR in the first year and pays back in 1.8 years.
            84   | 1000 | Converting saves 84.00 EUR in the first year: the savings do not add up to the cost within the years looked at.
            84   | 1    | Converting saves 84.00 EUR in the first year and pays back in less than 0.1 years.
            10   | 1001 | Converting saves 10.00 EUR in the first year: the savings do not add up to the cost within the years looked at.
            84   | 0    | Converting saves 84.00 EUR in the first year: nothing is invested, so there is no return to measure.
            0    | 350  | Converting saves nothing in the first year: nothing is saved, so the cost is never paid back.
            0.004 | 0.02 | Converting saves 0.00 EUR in the first year and pays back in 5 years.
            -8.5 | 350  | Converting costs 8.50 EUR more in the first year: nothing is saved, so the cost is never paid back.
            -8.5 | 0    | Converting costs 8.50 EUR more in the first year: nothing is invested, so there is no return to measure.
            """)
    void saysTheResultInASentence(double saving, double cost, String sentence) {
        assertEquals(sentence, figures(payback(saving, cost)).sentence().toString());
    }

    @Test
    void tellsEitherANumberOrAReason() {
        FigureAnswer there = FigureAnswer.of(Figure.of(0.123456789), 100);
        assertEquals(new BigDecimal("12.3457"), there.value());
        assertNull(there.reason());
        assertNull(there.why());
        FigureAnswer none = FigureAnswer.of(Figure.none(NoAnswer.NO_INVESTMENT), 100);
        assertNull(none.value());
        assertEquals(NoAnswer.NO_INVESTMENT, none.reason());
        assertEquals(NoAnswer.NO_INVESTMENT.words(), none.why().toString());
    }

    private static ConversionPayback payback(double saving, double cost) {
        YearlyUse before = new YearlyUse(0, Math.max(0, saving), 0, 0);
        YearlyUse after = new YearlyUse(0, Math.max(0, -saving), 0, 0);
        return ConversionPayback.of(new Conversion(before, after, cost, 0, 10), UNIT);
    }

    private static PaybackFigures figures(ConversionPayback payback) {
        return PaybackFigures.of(payback, UNIT, EURO, "/payback", new Explanation());
    }
}
