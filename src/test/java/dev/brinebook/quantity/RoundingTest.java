package dev.brinebook.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Currency;
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
    void keepsTenDigitsOfWhatIsAddedUp(double value, String expected) {
        assertEquals(expected, Rounding.addend(value).toPlainString());
    }

    @ParameterizedTest
    @CsvSource({"2.345, USD, 2.34", "2.355, USD, 2.36", "2.5, JPY, 2", "3.5, JPY, 4", "1, EUR, 1.00"})
    void roundsMoneyHalfToEvenInTheMinorUnitOfIso4217(double value, String currency, String expected) {
        assertEquals(expected, Rounding.money(value, Currency.getInstance(currency)).toPlainString());
    }

    @Test
    void refusesWhatIsNoNumber() {
        assertThrows(IllegalArgumentException.class, () -> Rounding.answer(Double.NaN));
        assertThrows(IllegalArgumentException.class,
                () -> Rounding.money(Double.POSITIVE_INFINITY, Currency.getInstance("USD")));
    }
}
