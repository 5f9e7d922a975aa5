// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import dev.brinebook.http.json.JsonReader;
import java.util.Optional;
import java.util.regex.Pattern;

/** How a table writes numbers: its decimal sign, and what stands between groups of three digits, if anything may. */
final class NumberForm {

    /** A number as JSON writes it. */
    static final NumberForm AS_JSON = new NumberForm('.', Grouping.NONE);

    /** RFC 8259, section 6. */
    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9]\\d*)(\\.\\d+)?([eE][+-]?\\d{1,2})?");

    /** What may stand between groups of three digits. */
    enum Grouping {
        NONE(""), COMMA(","), POINT("."), SPACE(" \u00A0\u202F"), APOSTROPHE("'\u2019");

        private final String signs;

        Grouping(String signs) {
            this.signs = signs;
        }
    }

    private final char decimal;
    private final Pattern grouped;

    /**
     * A form of numbers.
     *
     * @throws IllegalArgumentException when the sign between groups is the decimal sign
     */
    NumberForm(char decimal, Grouping grouping) {
        if (grouping.signs.indexOf(decimal) >= 0) {
            throw new IllegalArgumentException("a sign cannot have two meanings");
        }
        this.decimal = decimal;
        this.grouped = grouping == Grouping.NONE ? null
                : Pattern.compile("-?\\d{1,3}([" + grouping.signs + "])\\d{3}(?:\\1\\d{3})*(?:\\" + decimal + "\\d+)?");
    }

    char decimal() {
        return decimal;
    }

    /** The number as JSON writes it, if the text is a number of this form. */
    Optional<String> toJson(String text) {
        if (text.length() > JsonReader.MAX_NUMBER_LENGTH) {
            return Optional.empty();
        }
        String plain = text;
        if (grouped != null) {
            var matcher = grouped.matcher(text);
            plain = matcher.matches() ? text.replace(matcher.group(1), "") : text;
        }
        if (decimal != '.') {
            plain = plain.indexOf('.') >= 0 ? "" : plain.replace(decimal, '.');
        }
        return NUMBER.matcher(plain).matches() ? Optional.of(plain) : Optional.empty();
    }

    /** A number of JSON in this form, without groups. */
    String fromJson(String number) {
        return decimal == '.' ? number : number.replace('.', decimal);
    }
}
