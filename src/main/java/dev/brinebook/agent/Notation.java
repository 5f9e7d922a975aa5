// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.api.AlternativeRule;
import dev.brinebook.api.Amount;
import dev.brinebook.api.DefaultValue;
import dev.brinebook.api.JsonObject;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.quantity.Quantity;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What an operation takes, in few words, from what {@link Property} says of each component, as the contract is. Nothing of it is
 * written by hand but the smallest examples, which the tests send.
 */
final class Notation {

    /** Characters from which meanings are cut to their first sentence and parts to their names: about 1,000 tokens. */
    private static final int LONGEST_IN_FULL = 3_600;
    private static final JsonNode SMALLEST = Json.fileTree("smallest.json");

    private final RequestParts parts;

    Notation(List<Operation<?, ?>> operations) {
        this.parts = new RequestParts(operations);
    }

    RequestParts parts() {
        return parts;
    }

    /** The smallest request of an operation, or null where none is committed. */
    static JsonNode smallest(String operation) {
        return SMALLEST.get(operation);
    }

    /** The fields of an operation, its parts by the names of their fields only. */
    String operation(Operation<?, ?> operation) {
        StringBuilder text = new StringBuilder(operation.id()).append(": ").append(operation.summary())
                .append(". x{…} is a part: describe_operation part x has its types, ranges and defaults; ! required, ? optional.\n");
        fieldsThatFit(operation.requestType(), text);
        if (smallest(operation.id()) != null) {
            text.append("example ").append(smallest(operation.id())).append('\n');
        }
        return text.toString();
    }

    /** The fields of a part, the same in every operation. */
    String part(String name) {
        StringBuilder text = new StringBuilder(name).append(", a part of requests; ! required, ? optional.\n");
        fieldsThatFit(parts.byName().get(name), text);
        return text.toString();
    }

    private static void fieldsThatFit(Class<?> type, StringBuilder text) {
        int head = text.length();
        fields(type, text, false);
        if (text.length() > LONGEST_IN_FULL) {
            text.setLength(head);
            fields(type, text, true);
        }
    }

    private static void fields(Class<?> type, StringBuilder text, boolean brief) {
        Set<String> named = new TreeSet<>();
        Set<Class<?>> repeated = repeatedChoices(type);
        for (RecordComponent component : type.getRecordComponents()) {
            Property property = component.getAnnotation(Property.class);
            text.append(component.getName()).append(property.required() ? "!: " : "?: ")
                    .append(type(component, property, named, repeated, brief));
            String byDefault = DefaultValue.of(property).inWords();
            if (!byDefault.isEmpty()) {
                text.append(" = ").append(byDefault);
            }
            text.append("  // ").append(kinds(property)).append(meaning(property.value(), brief)).append('\n');
        }
        AlternativeRule.of(type).forEach(rule -> text.append(rule.required() ? "give " : "if any, give ")
                .append(rule.several() ? "at least one of " : "one of ").append(rule.alternatives().stream()
                .map(names -> String.join(" + ", names)).collect(Collectors.joining(" | "))).append('\n'));
        named.forEach(line -> text.append(line).append('\n'));
    }

    private static String meaning(String sentences, boolean brief) {
        return sentences.replaceAll(brief ? "\\. [A-Z].*|\\.$" : "\\.$", "");
    }

    /** The kinds of its record that a property is for, when it is not for all. */
    private static String kinds(Property property) {
        if (property.kinds().length > 0) {
            return "Only " + String.join(", ", property.kinds()) + ". ";
        }
        return property.exceptKinds().length == 0 ? "" : "Not " + String.join(", ", property.exceptKinds()) + ". ";
    }

    /** Closed lists that several components have, each listed once below them. */
    private static Set<Class<?>> repeatedChoices(Class<?> type) {
        Set<Class<?>> once = new HashSet<>();
        return Arrays.stream(type.getRecordComponents()).map(RequestParts::held).filter(held -> held.isEnum() && !once.add(held))
                .collect(Collectors.toSet());
    }

    private static String type(RecordComponent component, Property property, Set<String> named, Set<Class<?>> repeated,
            boolean brief) {
        Class<?> held = RequestParts.held(component);
        boolean list = RequestParts.isList(component);
        String range = range(property);
        String type;
        if (RequestParts.isPart(held)) {
            type = RequestParts.name(held) + (brief ? "{…}" : folded(held));
        } else if (held.isEnum()) {
            type = repeated.contains(held) ? held.getSimpleName() : choices(held);
            if (repeated.contains(held)) {
                named.add(held.getSimpleName() + " = " + choices(held));
            }
        } else if (Quantity.class.isAssignableFrom(held) || Amount.class.isAssignableFrom(held)) {
            String name = held.getSimpleName().replace("Quantity", "");
            named.add(name + " = " + shape(held));
            type = name + (range.isEmpty() ? "" : " " + range + " " + property.unit());
        } else {
            type = scalar(held) + (range.isEmpty() ? "" : " " + range) + (property.unit().isEmpty() ? "" : " " + property.unit())
                    + (list || property.maxItems() == Integer.MAX_VALUE ? "" : " of up to " + property.maxItems());
        }
        return list ? type + "[" + property.minItems() + ".." + (property.maxItems() == Integer.MAX_VALUE ? "" : property.maxItems())
                + "]" : type;
    }

    private static String folded(Class<?> part) {
        return Arrays.stream(part.getRecordComponents()).map(component -> component.getName()
                + (component.getAnnotation(Property.class).required() ? "!" : "")).collect(Collectors.joining(", ", "{", "}"));
    }

    private static String choices(Class<?> enumeration) {
        return WireNames.all(enumeration).stream().map(name -> "'" + name + "'").collect(Collectors.joining("|"));
    }

    private static String shape(Class<?> quantity) {
        RecordComponent unit = quantity.getRecordComponents()[1];
        return "{value, unit: " + (unit.getType().isEnum() ? choices(unit.getType()) : "ISO 4217 code, such as 'USD'") + "}";
    }

    private static String scalar(Class<?> type) {
        Map<Class<?>, String> names = Map.of(BigDecimal.class, "number", Integer.class, "int", Long.class, "int",
                Boolean.class, "true|false", String.class, "text", JsonObject.class, "object");
        return names.getOrDefault(type, type.getSimpleName().equals("LocalDate") ? "date" : "text");
    }

    private static String range(Property property) {
        boolean low = property.min() != Double.NEGATIVE_INFINITY;
        boolean high = property.max() != Double.POSITIVE_INFINITY;
        return !low && !high ? "" : (property.aboveMin() ? ">" : "") + (low ? plain(property.min()) : "") + ".."
                + (high ? plain(property.max()) : "");
    }

    private static String plain(double bound) {
        BigDecimal exact = BigDecimal.valueOf(bound).stripTrailingZeros();
        return (exact.scale() > 0 && exact.precision() > 9 ? Text.number(bound) : exact).toPlainString();
    }
}
