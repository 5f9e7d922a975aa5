// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import com.fasterxml.jackson.databind.JsonNode;
import dev.brinebook.api.DefaultValue;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Property;
import dev.brinebook.api.WireNames;
import dev.brinebook.quantity.Unit;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What is wrong with the assumptions of an answer: a pointer to nothing, a default other than the one that the contract states. */
public final class Assumed {

    /** Numbers are shown to four significant digits. */
    private static final double TOLERANCE = 1e-3;

    private Assumed() {
    }

    /** One line for each fault. */
    public static List<String> faults(Operation<?, ?> operation, JsonNode answer) {
        List<String> faults = new ArrayList<>();
        for (JsonNode entry : answer.path("assumptions")) {
            JsonNode pointer = entry.path("pointer");
            if (pointer.isMissingNode() != entry.has("name")) {
                faults.add("neither or both of pointer and name: " + entry);
            } else if (!pointer.isMissingNode()) {
                find(operation.requestType(), pointer.asText()).ifPresentOrElse(component -> check(entry, component, faults),
                        () -> faults.add(operation.id() + " has no property " + pointer.asText()));
            }
            if (!entry.has("value") && !entry.has("code") && !entry.has("note")) {
                faults.add("no value: " + entry);
            }
            if (entry.path("origin").asText().equals("caller") == entry.has("source")) {
                faults.add("a source of what the caller gives, or none of what is assumed: " + entry);
            }
        }
        return faults;
    }

    private static void check(JsonNode entry, RecordComponent component, List<String> faults) {
        DefaultValue stated = DefaultValue.of(component.getAnnotation(Property.class));
        if (!entry.path("origin").asText().equals("default")) {
            return;
        }
        if (!stated.code().isEmpty() && !stated.code().equals(entry.path("code").asText())) {
            faults.add("the contract states " + stated.code() + ": " + entry);
        }
        if (stated.number() != null) {
            double used = inBase(component, entry.path("value").doubleValue(), entry.path("unit").asText());
            double expected = inBase(component, stated.number().doubleValue(), stated.unit());
            if (!(Math.abs(used - expected) <= TOLERANCE * Math.abs(expected))) {
                faults.add("the contract states " + stated.inWords() + ": " + entry);
            }
        }
    }

    private static double inBase(RecordComponent component, double value, String unit) {
        return Arrays.stream(component.getType().isRecord() ? component.getType().getRecordComponents() : new RecordComponent[0])
                .filter(part -> Unit.class.isAssignableFrom(part.getType()))
                .flatMap(part -> Arrays.stream(part.getType().getEnumConstants()))
                .filter(constant -> WireNames.of((Enum<?>) constant).equals(unit)).findFirst()
                .map(constant -> ((Unit) constant).toBase(value)).orElse(value);
    }

    /** The property at a pointer, or the list that has the element there. */
    static Optional<RecordComponent> find(Class<?> type, String pointer) {
        Type at = type;
        RecordComponent found = null;
        for (String part : pointer.substring(1).split("/")) {
            if (at instanceof ParameterizedType list && part.matches("\\d+|\\*")) {
                at = list.getActualTypeArguments()[0];
            } else {
                found = at instanceof Class<?> record && record.isRecord() ? Arrays.stream(record.getRecordComponents())
                        .filter(each -> each.getName().equals(part)).findFirst().orElse(null) : null;
                if (found == null) {
                    return Optional.empty();
                }
                at = found.getGenericType();
            }
        }
        return Optional.ofNullable(found);
    }
}
