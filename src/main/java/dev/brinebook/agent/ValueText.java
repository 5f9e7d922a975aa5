// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.api.Amount;
import dev.brinebook.api.OptionalResultAnswer;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.Currency;
import java.util.Objects;
import java.util.stream.Collectors;

/** One value of an answer as text, rounded for people unless it is a setting; a text of the caller stands in quotation marks. */
final class ValueText {

    private static final MathContext THREE_DIGITS = new MathContext(3);
    private static final int MOST_OF_A_LIST = 8;

    /** How a number is rounded: by its kind for people, to four digits, or as a setting: as a controller takes it. */
    enum Rounding { FOR_PEOPLE, FOUR_DIGITS, SETTING }

    private final Language language;

    ValueText(Language language) {
        this.language = language;
    }

    /**
     * The text of {@code value}, or null where it has none.
     *
     * @param name the name of its component, which says what a plain number counts
     * @param rounding how a number is rounded
     */
    String of(Object value, String name, Rounding rounding) {
        if (value instanceof Message message) {
            return message.quoted().in(language);
        } else if (value instanceof Quantity<?> quantity) {
            return quantity(quantity, rounding).in(language);
        } else if (value instanceof OptionalResultAnswer result) {
            return result.value() == null ? null : of(result.value(), name, rounding);
        } else if (value instanceof BigDecimal number) {
            return language.number(number(number, name, rounding));
        } else if (value instanceof Enum<?> code) {
            return WireNames.of(code);
        } else if (value instanceof String text) {
            return Message.verbatim(text).quoted().in(language);
        } else if (value instanceof Boolean truth) {
            return truth ? "yes" : "no";
        } else if (value instanceof Collection<?> all) {
            return list(all, name, rounding);
        } else if (value instanceof Amount money) {
            return Text.rounded(money.value().doubleValue(), Currency.getInstance(money.unit())).in(language);
        }
        return value instanceof Record ? null : Objects.toString(value, null);
    }

    /** The text without no-break spaces. */
    static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    private String list(Collection<?> all, String name, Rounding rounding) {
        return all.isEmpty() ? null : all.stream().limit(MOST_OF_A_LIST).map(one -> of(one, name, rounding)).filter(Objects::nonNull)
                .collect(Collectors.joining(", "));
    }

    private static Message quantity(Quantity<?> quantity, Rounding rounding) {
        return switch (rounding) {
            case FOR_PEOPLE -> Text.rounded(quantity);
            case FOUR_DIGITS -> Text.measure(Text.number(quantity.value().doubleValue()), quantity.unit().symbol());
            case SETTING -> Text.setting(quantity);
        };
    }

    private static BigDecimal number(BigDecimal number, String name, Rounding rounding) {
        return switch (rounding) {
            case FOR_PEOPLE -> forPeople(number.doubleValue(), name);
            case FOUR_DIGITS -> Text.number(number.doubleValue());
            case SETTING -> Text.isMachineMade(number) ? forPeople(number.doubleValue(), name) : number;
        };
    }

    private static BigDecimal forPeople(double value, String name) {
        if (name.contains("ardDays")) {
            return Text.hardDays(value);
        } else if (name.endsWith("Years")) {
            return Text.years(value);
        } else if (name.contains("Days")) {
            return Text.days(value);
        } else if (name.equals("regenerations") || name.endsWith("Minutes")) {
            return Text.whole(value);
        }
        return dev.brinebook.quantity.Rounding.significant(value, THREE_DIGITS);
    }
}
