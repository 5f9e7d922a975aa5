// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.ConcentrationUnit;
import dev.brinebook.quantity.FlowUnit;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.LengthUnit;
import dev.brinebook.quantity.MassUnit;
import dev.brinebook.quantity.PressureUnit;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.TemperatureUnit;
import dev.brinebook.quantity.Unit;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.text.Measure;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Currency;

/**
 * Numbers inside texts. For people they are rounded by their kind, so that a sentence can be read aloud; a number of a formula or
 * note has three significant digits and a whole number four, a setting every digit that a controller takes. The
 * answer's own numbers are rounded elsewhere, once.
 */
public final class Text {

    private static final MathContext FOUR_DIGITS = new MathContext(4);
    private static final MathContext THREE_DIGITS = new MathContext(3, RoundingMode.HALF_UP);
    private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.HALF_UP);
    private static final int MOST_SETTING_DIGITS = 4;
    private static final MathContext ONE_DIGIT = new MathContext(1, RoundingMode.HALF_UP);

    private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");
    private static final BigDecimal TENTH = new BigDecimal("0.1");
    private static final BigDecimal HALF = new BigDecimal("0.5");
    private static final BigDecimal HUNDRED = new BigDecimal("100");

    private Text() {
    }

    /** A number to four significant digits, plain. */
    public static BigDecimal number(double value) {
        return Rounding.significant(value, FOUR_DIGITS);
    }

    /** A number for people: three significant digits, from a thousand on four. */
    public static BigDecimal digits(double value) {
        return Rounding.significant(value, Math.abs(value) < 1000 ? THREE_DIGITS : FOUR_DIGITS);
    }

    /** From one quantity to another in the same unit, or the one that both are. */
    public static Message span(Quantity<?> low, Quantity<?> high) {
        return low.equals(high) ? of(low) : Message.of("text.to", digits(low.value().doubleValue()), of(high));
    }

    /** A quantity with its unit, to the digits of {@link #digits}. */
    public static Message of(Quantity<?> quantity) {
        return measure(digits(quantity.value().doubleValue()), quantity.unit());
    }

    /** A quantity with every digit, such as a setting: rounded once more it might not be one that can be set. */
    public static Message exact(Quantity<?> quantity) {
        return measure(plain(quantity.value()), quantity.unit());
    }

    /** A setting: every digit that a controller takes; with more than those, which only a calculation has, three significant digits. */
    public static Message setting(Quantity<?> quantity) {
        return isMachineMade(quantity.value()) ? measure(plain(quantity.value().round(THREE_DIGITS)), quantity.unit()) : exact(quantity);
    }

    /** Whether a number has more digits than any controller takes. */
    public static boolean isMachineMade(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() > 0 && stripped.precision() > MOST_SETTING_DIGITS;
    }

    /** A quantity for people, rounded by its kind. */
    public static Message rounded(Quantity<?> quantity) {
        return measure(rounded(quantity.value(), quantity.unit()), quantity.unit());
    }

    /** From one quantity to another for people, or the one that both are when rounded. */
    public static Message roundedSpan(Quantity<?> low, Quantity<?> high) {
        BigDecimal from = rounded(low.value(), low.unit());
        return from.compareTo(rounded(high.value(), high.unit())) == 0 ? rounded(high) : Message.of("text.to", from, rounded(high));
    }

    /** A price of a kilogram or litre for people: to the cent, below one to two significant digits. */
    public static Message unitPrice(double amount, Currency currency) {
        BigDecimal price = BigDecimal.valueOf(amount);
        return measure(plain(amount < 1 ? price.round(TWO_DIGITS) : price.setScale(2, RoundingMode.HALF_UP)), currency.getCurrencyCode());
    }

    private static Message measure(BigDecimal value, Unit unit) {
        return measure(value, unit.symbol());
    }

    /** A number that is rounded already, with the symbol of its unit or the code of its currency. */
    public static Message measure(BigDecimal value, String unit) {
        return Message.of("pattern.value", new Measure(value, unit));
    }

    /** An amount of money for people: whole below 100, above it in steps of 5. */
    public static Message rounded(double amount, Currency currency) {
        BigDecimal step = BigDecimal.valueOf(Math.abs(amount) < 100 ? 1 : 5);
        return measure(toStep(BigDecimal.valueOf(amount), step, RoundingMode.HALF_UP), currency.getCurrencyCode());
    }

    /** A whole number, of more than four digits to four. */
    public static BigDecimal whole(double value) {
        return plain(BigDecimal.valueOf(value).setScale(0, RoundingMode.HALF_UP).round(FOUR_DIGITS));
    }

    /** A number to a tenth. */
    public static BigDecimal tenths(double value) {
        return toStep(BigDecimal.valueOf(value), TENTH, RoundingMode.HALF_UP);
    }

    /** Hard days: whole, below ten to a tenth, as a year has few. */
    public static BigDecimal hardDays(double perYear) {
        return toStep(BigDecimal.valueOf(perYear), perYear < 10 ? TENTH : BigDecimal.ONE, RoundingMode.HALF_UP);
    }

    /** Days between regenerations, to half a day; shorter than a day to a tenth, from a hundred on whole. */
    public static BigDecimal days(double days) {
        return toStep(BigDecimal.valueOf(days), days < 1 ? TENTH : days < 100 ? HALF : BigDecimal.ONE, RoundingMode.HALF_UP);
    }

    /** Years to pay back: to a tenth below two years, else to half a year. */
    public static BigDecimal years(double years) {
        return toStep(BigDecimal.valueOf(years), years < 2 ? TENTH : HALF, RoundingMode.HALF_UP);
    }

    private static BigDecimal rounded(BigDecimal value, Unit unit) {
        double size = Math.abs(value.doubleValue());
        BigDecimal step = step(unit, size);
        if (step == null) {
            return plain(value.round(THREE_DIGITS));
        }
        boolean capacity = unit instanceof CapacityUnit;
        RoundingMode mode = capacity ? RoundingMode.DOWN : RoundingMode.HALF_UP;
        BigDecimal rounded = plain(toStep(value, step, mode).round(new MathContext(MOST_SETTING_DIGITS, mode)));
        return rounded.signum() == 0 && value.signum() != 0 ? plain(value.round(ONE_DIGIT)) : rounded;
    }

    /** The step that a number of about {@code size} is rounded to; null for three significant digits. */
    private static BigDecimal step(Unit unit, double size) {
        if (unit instanceof HardnessUnit hardness) {
            return hardness == HardnessUnit.MG_PER_L || size > 10 ? BigDecimal.ONE : TENTH;
        }
        if (unit == ConcentrationUnit.MG_PER_L) {
            return size >= 10 ? BigDecimal.ONE : size >= 0.1 ? TENTH : HUNDREDTH;
        }
        if (unit instanceof VolumeUnit volume) {
            return switch (volume) {
                case CUBIC_METRE -> TENTH;
                case CUBIC_FOOT -> HUNDREDTH;
                default -> size < 10 ? TENTH : size < 100 ? BigDecimal.ONE : size < 2000 ? BigDecimal.TEN : HUNDRED;
            };
        }
        if (unit instanceof MassUnit mass) {
            return switch (mass) {
                case POUND -> size < 50 ? HALF : BigDecimal.TEN;
                case KILOGRAM -> size < 30 ? TENTH : BigDecimal.ONE;
                default -> null;
            };
        }
        if (unit instanceof FlowUnit flow) {
            return size >= (flow == FlowUnit.LITRE_PER_MINUTE ? 10 : 100) ? BigDecimal.ONE : TENTH;
        }
        if (unit instanceof CapacityUnit capacity) {
            return switch (capacity) {
                case GRAIN -> size < 1000 ? BigDecimal.TEN : HUNDRED;
                case GRAM -> size < 100 ? BigDecimal.ONE : BigDecimal.TEN;
                default -> null;
            };
        }
        if (unit instanceof LengthUnit length) {
            return length == LengthUnit.METRE ? HUNDREDTH : TENTH;
        }
        if (unit instanceof PressureUnit pressure) {
            return pressure == PressureUnit.BAR ? TENTH : BigDecimal.ONE;
        }
        return unit instanceof TemperatureUnit ? BigDecimal.ONE : null;
    }

    private static BigDecimal toStep(BigDecimal value, BigDecimal step, RoundingMode mode) {
        return plain(value.divide(step, 0, mode).multiply(step));
    }

    private static BigDecimal plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
