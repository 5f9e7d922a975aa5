// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a request that leaves a property out gets.
 *
 * @param number the number; null where there is none
 * @param unit its unit, empty for one without
 * @param code the choice, by its name on the wire; empty where there is none
 * @param words what else there is to say
 */
public record DefaultValue(BigDecimal number, String unit, String code, String words) {

    public static DefaultValue of(Property property) {
        BigDecimal number = Double.isNaN(property.byDefault()) ? null : Text.number(property.byDefault());
        return new DefaultValue(number, property.defaultUnit().isEmpty() ? property.unit() : property.defaultUnit(),
                property.defaultCode(), property.fallback());
    }

    /** The whole of it in words; empty where there is no default. */
    public String inWords() {
        String amount = number == null ? code : unit.isEmpty() ? number.toPlainString() : number.toPlainString() + " " + unit;
        return Stream.of(amount, words).filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
    }

    /** As data of the type of its property: a number, a quantity, a name, true or false; empty where it depends on other values. */
    public Optional<Object> asData(Class<?> type) {
        if (number == null) {
            return code.isEmpty() ? Optional.empty() : Optional.of(type == Boolean.class ? Boolean.valueOf(code)
                    : type.isRecord() ? Map.of(DiscriminatorValues.of(type).property(), code) : code);
        }
        if (!Quantity.class.isAssignableFrom(type)) {
            return Optional.of(number);
        }
        Map<String, Object> quantity = new LinkedHashMap<>();
        quantity.put("value", number);
        quantity.put("unit", unit);
        return Optional.of(quantity);
    }
}
