// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundingTest {

    @ParameterizedTest
    @CsvSource({"316.68485, 316.685", "0.00012345678, 0.000123457", "1234567, 1234570", "100000, 100000", "0, 0",
        "-2.5000005, -2.5", "1e-7, 0.0000001"})
    void keepsSixSignificantDigitsInPlainNotation(double value, String expected) {
        assertEquals(expected, Rounding.answer(value).toPlainString());
    }

    @ParameterizedTest
    @CsvSource({"64.711878979999, 64.71187898", "1234567890.5, 1234567890", "10, 10", "0, 0", "-2.5, -2.5"})
    void keepsTenDigitsOfAddends(double value, String expected) {
        assertEquals(expected, Rounding.addend(value).toPlainString());
    }

    @ParameterizedTest
    @CsvSource({"0.63143, 0.631", "2.41e-6, 0", "115.7664, 115.766", "120, 120", "1234567, 1234570", "-0.3162, -0.316", "0.5, 0.5"})
    void roundsRareDaysToAThousandth(double value, String expected) {
        assertEquals(expected, Rounding.toThousandth(value).toPlainString());
    }

    @ParameterizedTest
    @CsvSource({"2.345, USD, 2.34", "2.355, USD, 2.36", "2.5, JPY, 2", "3.5, JPY, 4", "1, EUR, 1.00"})
    void roundsMoneyHalfToEvenInTheMinorUnitOfIso4217(double value, String currency, String expected) {
        assertEquals(expected, Rounding.money(value, Currency.getInstance(currency)).toPlainString());
    }

    /** [java.math]: the way by scaling gives what rounding the shortest decimals gives, at every size and near every tie. */
    @Test
    void agreesWithRoundingOfTheDecimals() {
        Random random = new Random(20_261_125);
        for (int i = 0; i < 20_000; i++) {
            double wide = (random.nextDouble() - 0.5) * StrictMath.pow(10, random.nextInt(24) - 10);
            double tie = (random.nextInt(2_000_000) + 0.5) / StrictMath.pow(10, random.nextInt(9));
            for (double value : new double[] {wide, tie, Math.nextUp(tie), Math.nextDown(tie)}) {
                for (MathContext digits : List.of(new MathContext(4), new MathContext(6, RoundingMode.HALF_EVEN),
                        new MathContext(10, RoundingMode.HALF_EVEN))) {
                    BigDecimal expected = BigDecimal.valueOf(value).round(digits);
                    assertEquals(expected.stripTrailingZeros().toPlainString(),
                            Rounding.significant(value, digits).toPlainString(), () -> digits + " of " + value);
                }
            }
        }
    }

    @Test
    void refusesNaNAndInfinity() {
        assertThrows(IllegalArgumentException.class, () -> Rounding.answer(Double.NaN));
        assertThrows(IllegalArgumentException.class,
                () -> Rounding.money(Double.POSITIVE_INFINITY, Currency.getInstance("USD")));
    }
}
