// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.PressureQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.ConcentrationUnit;
import dev.brinebook.quantity.FlowUnit;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.MassUnit;
import dev.brinebook.quantity.PressureUnit;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.VolumeUnit;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What people are shown of a number. Source: common practice, to the step that a person can set, buy or read off. */
class TextTest {

    private static BigDecimal number(String text) {
        return new BigDecimal(text);
    }

    static Stream<Arguments> quantities() {
        return Stream.of(
                Arguments.of(new HardnessQuantity(number("26.9612"), HardnessUnit.GPG), "27 gpg"),
                Arguments.of(new HardnessQuantity(number("4.84"), HardnessUnit.GPG), "4.8 gpg"),
                Arguments.of(new HardnessQuantity(number("306.6"), HardnessUnit.MG_PER_L), "307 mg/L"),
                Arguments.of(new HardnessQuantity(number("17.74"), HardnessUnit.GERMAN_DEGREE), "18 °dH"),
                Arguments.of(new ConcentrationQuantity(number("0.0358"), ConcentrationUnit.MG_PER_L), "0.04 mg/L"),
                Arguments.of(new ConcentrationQuantity(number("83.6"), ConcentrationUnit.MG_PER_L), "84 mg/L"),
                Arguments.of(new VolumeQuantity(number("480.5"), VolumeUnit.US_GALLON), "480 gal"),
                Arguments.of(new VolumeQuantity(number("11771"), VolumeUnit.US_GALLON), "11,800 gal"),
                Arguments.of(new VolumeQuantity(number("1.5"), VolumeUnit.CUBIC_FOOT), "1.5 ft³"),
                Arguments.of(new MassQuantity(number("10.4"), MassUnit.POUND), "10.5 lb"),
                Arguments.of(new MassQuantity(number("2724"), MassUnit.POUND), "2,720 lb"),
                Arguments.of(new MassQuantity(number("1.92"), MassUnit.KILOGRAM), "1.9 kg"),
                Arguments.of(new CapacityQuantity(number("33291"), CapacityUnit.GRAIN), "33,200 grains"),
                Arguments.of(new CapacityQuantity(number("651.3"), CapacityUnit.GRAM), "650 g"),
                Arguments.of(new FlowQuantity(number("4.363"), FlowUnit.GPM), "4.4 gpm"),
                Arguments.of(new FlowQuantity(number("16.04"), FlowUnit.LITRE_PER_MINUTE), "16 L/min"),
                Arguments.of(new PressureQuantity(number("2.399"), PressureUnit.PSI), "2 psi"),
                Arguments.of(new MassQuantity(number("0.02"), MassUnit.KILOGRAM), "0.02 kg"),
                Arguments.of(new HardnessQuantity(number("76392"), HardnessUnit.MG_PER_L), "76,390 mg/L"),
                Arguments.of(new CapacityQuantity(number("1234567"), CapacityUnit.GRAIN), "1,234,000 grains"),
                Arguments.of(new FlowQuantity(number("267.84"), FlowUnit.GPM), "268 gpm"));
    }

    @ParameterizedTest
    @MethodSource("quantities")
    void roundsAQuantityByItsKind(Quantity<?> quantity, String text) {
        assertEquals(text.replace(' ', '\u00a0'), Text.rounded(quantity).toString());
    }

    @ParameterizedTest
    @CsvSource({"99.4, 99 USD", "250.9, 250 USD", "1909.6, '1,910 USD'", "0, 0 USD"})
    void roundsMoney(double amount, String text) {
        assertEquals(text.replace(' ', '\u00a0'), Text.rounded(amount, Currency.getInstance("USD")).toString());
    }

    @ParameterizedTest
    @CsvSource({"0.1004, 0.1", "52.314, 52.3", "1027.4, 1027", "66899.6, 66900"})
    void writesThreeDigitsOrAWholeNumberOfFour(double value, String text) {
        assertEquals(text, Text.digits(value).toPlainString());
    }

    @ParameterizedTest
    @CsvSource({"0.06275, 0.063 USD", "0.451, 0.45 USD", "12.345, 12.35 USD"})
    void roundsAPriceOfAKilogram(double amount, String text) {
        assertEquals(text.replace(' ', '\u00a0'), Text.unitPrice(amount, Currency.getInstance("USD")).toString());
    }

    @ParameterizedTest
    @CsvSource({"4.13, 4", "4.3, 4.5", "0.42, 0.4", "11.4, 11.5", "189.5, 190"})
    void roundsDaysBetweenRegenerations(double days, String text) {
        assertEquals(text, Text.days(days).toPlainString());
    }

    @ParameterizedTest
    @CsvSource({"1.371, 1.4", "2.76, 3", "4.1, 4"})
    void roundsYearsToPayBack(double years, String text) {
        assertEquals(text, Text.years(years).toPlainString());
    }
}
