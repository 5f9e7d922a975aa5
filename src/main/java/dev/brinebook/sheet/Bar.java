// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.sheet;

import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A bar of a chart, on an axis from zero.
 *
 * @param label what it stands for
 * @param value the value that it shows
 * @param length its length, from 0 to 100
 */
public record Bar(Message label, SheetCell value, BigDecimal length) {

    /** The longest bar of a chart. */
    private static final int FULL = 100;

    /** The bar of {@code size} in a chart whose largest is {@code largest}, above 0. */
    public static Bar of(Message label, SheetCell value, double size, double largest) {
        return new Bar(label, value, BigDecimal.valueOf(FULL * size / largest).setScale(1, RoundingMode.HALF_UP));
    }

    /** Its length as a number of the drawing, whatever the language. */
    public String width() {
        return length.toPlainString();
    }
}
