// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

import java.math.BigDecimal;

/**
 * A number with its unit, as people write it.
 *
 * @param <U> the units of its kind
 */
public interface Quantity<U extends Enum<U> & Unit> {

    BigDecimal value();

    U unit();

    /** The quantity in the base unit of its kind. */
    default double inBase() {
        return unit().toBase(value().doubleValue());
    }
}
