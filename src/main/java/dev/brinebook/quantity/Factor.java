// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * How many base units are in one of a unit, made from exact definitions: once as a decimal, to state it, once as the binary number by
 * which is calculated.
 *
 * @param exact the number where it is a finite decimal, else 34 digits of it
 * @param binary the same by binary operations, which may round each
 */
public record Factor(BigDecimal exact, double binary) {

    /** {@code number} as it is written in its definition. */
    public static Factor of(double number) {
        return new Factor(BigDecimal.valueOf(number), number);
    }

    /** This times {@code number}, as it is written in its definition. */
    public Factor times(double number) {
        return new Factor(exact.multiply(BigDecimal.valueOf(number)), binary * number);
    }

    /** This divided by {@code number}, as it is written in its definition. */
    public Factor per(double number) {
        return per(of(number));
    }

    /** This divided by {@code other}. */
    public Factor per(Factor other) {
        return new Factor(exact.divide(other.exact, MathContext.DECIMAL128), binary / other.binary);
    }
}
