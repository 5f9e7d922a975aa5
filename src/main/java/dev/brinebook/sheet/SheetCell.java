// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.sheet;

import dev.brinebook.api.quantity.Money;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

/**
 * One value of a sheet.
 *
 * @param at JSON pointer into the answer that it is taken from; null where nothing is
 * @param value a quantity or a number, which is rounded for people, or a message
 * @param exact the number as the answer has it; null where the value is no number
 */
public record SheetCell(String at, Object value, String exact) {

    /** A value of the answer as it is. */
    public static SheetCell of(String at, Object value) {
        return new SheetCell(at, value, value instanceof Quantity<?> quantity ? quantity.value().toPlainString()
                : value instanceof Money money ? money.value().toPlainString()
                : value instanceof BigDecimal number ? number.toPlainString() : null);
    }

    /** A number of the answer in other words. */
    public static SheetCell inWords(String at, Message value, BigDecimal exact) {
        return new SheetCell(at, value, exact.toPlainString());
    }

    /** What the answer has no value for. */
    public static SheetCell words(Object value) {
        return new SheetCell(null, value, null);
    }
}
