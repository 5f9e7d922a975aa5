// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.quantity.Unit;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What a {@link Property} demands of a value, read once: to ask an annotation takes longer than to check a number. */
final class Limits {

    private final boolean required;
    private final String unit;
    private final Range range;
    private final int minItems;
    private final int maxItems;
    private final Map<Unit, Range> inBase = new ConcurrentHashMap<>();

    Limits(Property property) {
        required = property.required();
        unit = property.unit();
        range = new Range(property.min(), property.max(), property.aboveMin());
        minItems = property.minItems();
        maxItems = property.maxItems();
    }

    boolean required() {
        return required;
    }

    /** The unit that the range is stated in; empty where there is none, or it is that of each value. */
    String unit() {
        return unit;
    }

    /** The range as it is stated. */
    Range range() {
        return range;
    }

    /** The range of a quantity in the base unit of its kind; {@code own} is the unit that it has. */
    Range inBaseOf(Unit own) {
        Range known = inBase.get(own);
        return known != null ? known : inBase.computeIfAbsent(own, this::computeInBase);
    }

    private Range computeInBase(Unit own) {
        Unit stated = unit.isEmpty() ? own : like(own);
        return new Range(stated.toBase(range.min()), stated.toBase(range.max()), range.aboveMin());
    }

    private Unit like(Unit sibling) {
        for (Object constant : ((Enum<?>) sibling).getDeclaringClass().getEnumConstants()) {
            if (((Unit) constant).symbol().equals(unit)) {
                return (Unit) constant;
            }
        }
        throw new IllegalStateException(unit + " is no unit like " + sibling);
    }

    int minItems() {
        return minItems;
    }

    int maxItems() {
        return maxItems;
    }
}
