// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.sheet;

import dev.brinebook.api.quantity.Money;
import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;

/**
 * One cell of a sheet.
 *
 * @param at JSON pointer into the answer that it is taken from; null where nothing is
 * @param value a quantity or a number, which is rounded for people, or a message
 */
public record SheetCell(String at, Object value) {

    /** The number as the answer has it; null for a message. */
    public String exact() {
        return value instanceof Quantity<?> quantity ? quantity.value().toPlainString()
                : value instanceof Money money ? money.value().toPlainString()
                : value instanceof BigDecimal number ? number.toPlainString() : null;
    }
}
