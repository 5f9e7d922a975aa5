// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.Property;
import java.math.BigDecimal;

/** The range, unit and length of a property, in words. */
final class Ranges {

    private Ranges() {
    }

    static String inWords(Property property, boolean list) {
        String numbers = numbers(property);
        String unit = property.unit();
        String count = count(property, list);
        String range = numbers.isEmpty() ? unit.isEmpty() ? "" : "in " + unit : unit.isEmpty() ? numbers : numbers + " " + unit;
        return range.isEmpty() || count.isEmpty() ? range + count : count + ", each " + range;
    }

    private static String numbers(Property property) {
        boolean low = property.min() != Double.NEGATIVE_INFINITY;
        boolean high = property.max() != Double.POSITIVE_INFINITY;
        if (low && high) {
            return (property.aboveMin() ? "above " : "") + plain(property.min()) + " to " + plain(property.max());
        } else if (low) {
            return (property.aboveMin() ? "above " : "at least ") + plain(property.min());
        }
        return high ? "at most " + plain(property.max()) : "";
    }

    private static String count(Property property, boolean list) {
        String what = list ? " elements" : " characters";
        if (property.maxItems() == Integer.MAX_VALUE) {
            return property.minItems() == 0 ? "" : "at least " + property.minItems() + what;
        } else if (property.minItems() == property.maxItems()) {
            return property.minItems() + what;
        }
        return property.minItems() == 0 ? "at most " + property.maxItems() + what
                : property.minItems() + " to " + property.maxItems() + what;
    }

    private static String plain(double number) {
        BigDecimal plain = BigDecimal.valueOf(number).stripTrailingZeros();
        return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
    }
}
