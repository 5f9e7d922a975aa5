// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.api.OptionalResultAnswer;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.RateOfReturn;
import dev.brinebook.payback.Retrofit;
import dev.brinebook.payback.RetrofitPayback;
import dev.brinebook.payback.YearlyUse;
import dev.brinebook.text.Message;
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
        RetrofitPayback one = payback(0.9, 350);
        RetrofitPayback several = new RetrofitPayback(one.investment(), one.yearlySaving(), one.simplePaybackYears(),
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
            84   | 150  | Converting saves 84\u00a0EUR in the first year and pays back in 1.8 years.
            84   | 1000 | Converting saves 84\u00a0EUR in the first year. The savings do not cover the cost within 10 years.
            84   | 1    | Converting saves 84\u00a0EUR in the first year and pays back in less than 0.1 years.
            10   | 1001 | Converting saves 10\u00a0EUR in the first year. The savings do not cover the cost within 10 years.
            84   | 0    | Converting saves 84\u00a0EUR in the first year. Nothing is invested, so there is nothing to pay back.
            1234 | 9000 | Converting saves 1,235\u00a0EUR in the first year and pays back in 7.5 years.
            0    | 350  | Converting saves nothing in the first year, so there is no payback.
            0.004 | 0.02 | Converting saves 0\u00a0EUR in the first year and pays back in 5 years.
            -8.5 | 350  | Converting costs 9\u00a0EUR more in the first year, so it does not pay.
            -8.5 | 0    | Converting costs 9\u00a0EUR more in the first year, so it does not pay.
            """)
    void saysTheResultInASentence(double saving, double cost, String sentence) {
        assertEquals(sentence, figures(payback(saving, cost)).sentence().toString());
    }

    @Test
    void givesEitherANumberOrAReason() {
        OptionalResultAnswer there = OptionalResultAnswer.of(OptionalResult.of(0.123456789), 100);
        assertEquals(new BigDecimal("12.3457"), there.value());
        assertNull(there.reason());
        assertNull(there.why());
        OptionalResultAnswer none = OptionalResultAnswer.of(OptionalResult.none(NoResultReason.NO_INVESTMENT), 100);
        assertNull(none.value());
        assertEquals(NoResultReason.NO_INVESTMENT, none.reason());
        assertEquals(Message.of(NoResultReason.NO_INVESTMENT).toString(), none.why().toString());
    }

    private static RetrofitPayback payback(double saving, double cost) {
        YearlyUse before = new YearlyUse(0, Math.max(0, saving), 0, 0);
        YearlyUse after = new YearlyUse(0, Math.max(0, -saving), 0, 0);
        return RetrofitPayback.of(new Retrofit(before, after, cost, 0, 10), UNIT);
    }

    private static PaybackFigures figures(RetrofitPayback payback) {
        return PaybackFigures.of(payback, UNIT, EURO);
    }
}
