// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.field.FieldQuantity;

/** One of several answers to a question. */
public enum Witness {
    BY_REFILL, BY_DRAW, BY_BOOKS, BY_GEOMETRY, BY_NAMEPLATE, BY_RUN;

    /** The answer that a quantity gives. */
    static Witness of(FieldQuantity quantity) {
        return switch (quantity) {
            case SALT_BY_REFILL -> BY_REFILL;
            case SALT_BY_DRAW -> BY_DRAW;
            case SALT_BY_BOOKS -> BY_BOOKS;
            case RESIN_BY_GEOMETRY -> BY_GEOMETRY;
            case RESIN_BY_NAMEPLATE -> BY_NAMEPLATE;
            case CAPACITY, CAPACITY_BY_CHECKED_METER -> BY_RUN;
            default -> throw new IllegalArgumentException(quantity + " is no answer of several");
        };
    }
}
