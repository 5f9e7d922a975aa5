// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.api.JsonObject;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.WireNames;
import dev.brinebook.http.RandomRequests;
import dev.brinebook.model.Model;
import dev.brinebook.quantity.Quantity;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/** A request, with one of its inputs different: by so much that coarse grids of doses, hours and days do not hide it. */
final class InputChanges {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    /** The small ones are for inputs whose range allows no other. */
    private static final List<BigDecimal> FACTORS = List.of(new BigDecimal("2"), new BigDecimal("0.5"), new BigDecimal("4"),
            new BigDecimal("1.1"), new BigDecimal("0.9"));
    private static final List<BigDecimal> INSTEAD_OF_ZERO = List.of(BigDecimal.TEN, BigDecimal.ONE, new BigDecimal("0.2"));
    private static final int RANDOM_VALUES = 3;

    private final ObjectNode request;
    private final Class<?> requestType;

    InputChanges(ObjectNode request, Class<?> requestType) {
        this.request = request;
        this.requestType = requestType;
    }

    /** Pointers to the values that the request gives, quantities whole, of lists the first and the middle element. */
    List<String> given() {
        List<String> pointers = new ArrayList<>();
        walk(request, "", pointers);
        return pointers;
    }

    private void walk(JsonNode node, String pointer, List<String> to) {
        if (node.isArray()) {
            IntStream.of(0, node.size() / 2).distinct().filter(i -> i < node.size()).forEach(i -> walk(node.get(i), pointer + "/" + i, to));
        } else if (node.isObject() && !isQuantity(node) && !isCase(pointer)) {
            node.properties().forEach(part -> walk(part.getValue(), pointer + "/" + part.getKey(), to));
        } else {
            to.add(pointer);
        }
    }

    /** Pointers to all single inputs that a request may give, and to lists as wholes. */
    static List<String> possible(Class<?> requestType) {
        List<String> pointers = new ArrayList<>();
        possible(requestType, "", pointers);
        return pointers;
    }

    private static void possible(Class<?> type, String pointer, List<String> to) {
        for (RecordComponent component : type.getRecordComponents()) {
            Class<?> part = component.getType();
            String at = pointer + "/" + component.getName();
            if (part.isRecord() && !part.getRecordComponents()[0].getName().equals("value") && part != JsonObject.class) {
                possible(part, at, to);
            } else {
                to.add(at);
            }
        }
    }

    private static boolean isQuantity(JsonNode node) {
        return node.size() == 2 && node.path("value").isNumber() && node.has("unit");
    }

    private boolean isCase(String pointer) {
        return !pointer.isEmpty() && Assumed.find(requestType, pointer).filter(found -> found.getType() == JsonObject.class).isPresent();
    }

    /** The request with other values at {@code pointer}; {@code assumed} is what was taken where it has none there, or null. */
    List<ObjectNode> at(String pointer, Resolved assumed) {
        return Assumed.find(requestType, pointer).stream().flatMap(component -> {
            JsonNode value = request.at(pointer);
            List<JsonNode> others = value.isMissingNode() ? instead(component, assumed)
                    : others(value, type(component, pointer), component);
            return others.stream().map(other -> with(pointer, other)).filter(changed -> changed != null);
        }).toList();
    }

    private static Class<?> type(RecordComponent component, String pointer) {
        Type type = component.getGenericType();
        boolean element = pointer.matches(".*/\\d+") && type instanceof ParameterizedType;
        return element ? (Class<?>) ((ParameterizedType) type).getActualTypeArguments()[0] : component.getType();
    }

    /** Of a default or an estimate, or of what is not there. */
    private static List<JsonNode> instead(RecordComponent component, Resolved assumed) {
        Class<?> type = component.getType();
        if (assumed == null) {
            return IntStream.rangeClosed(1, RANDOM_VALUES).mapToObj(seed -> new RandomRequests(seed).value(component)).toList();
        }
        boolean number = assumed.value() != null && assumed.value().signum() != 0;
        if (number && Quantity.class.isAssignableFrom(type)) {
            return others(JSON.objectNode().put("value", assumed.value()).put("unit", assumed.unit()), type, component);
        } else if (number && Number.class.isAssignableFrom(type)) {
            return others(JSON.numberNode(assumed.value()), type, component);
        } else if (assumed.code() != null && type == Boolean.class) {
            return List.of(JSON.booleanNode(!assumed.code().equals("true")));
        } else if (assumed.code() != null && !(component.getGenericType() instanceof ParameterizedType)) {
            return others(JSON.textNode(assumed.code()), type, component);
        }
        return IntStream.rangeClosed(1, RANDOM_VALUES).mapToObj(seed -> new RandomRequests(seed).value(component)).toList();
    }

    private static List<JsonNode> others(JsonNode value, Class<?> type, RecordComponent component) {
        if (type == JsonObject.class) {
            return Stream.of(FACTORS.get(0)).map(factor -> times(value, factor)).toList();
        } else if (value.isObject()) {
            return numbers(value.path("value").decimalValue()).map(number -> (JsonNode) JSON.objectNode().put("value", number)
                    .put("unit", value.path("unit").asText())).toList();
        } else if (type == Integer.class || type == Long.class) {
            long whole = value.asLong();
            return LongStream.of(2 * whole + 1, whole / 2, 4 * whole, whole + 1, whole - 1).filter(other -> other != whole).distinct()
                    .mapToObj(other -> (JsonNode) JSON.numberNode(other)).toList();
        } else if (value.isNumber()) {
            return numbers(value.decimalValue()).map(number -> (JsonNode) JSON.numberNode(number)).toList();
        } else if (value.isBoolean()) {
            return List.of(JSON.booleanNode(!value.asBoolean()));
        }
        return texts(value.asText(), type, component).<JsonNode>map(JSON::textNode).toList();
    }

    private static Stream<BigDecimal> numbers(BigDecimal value) {
        return value.signum() == 0 ? INSTEAD_OF_ZERO.stream()
                : FACTORS.stream().map(factor -> value.multiply(factor).round(new MathContext(6)));
    }

    private static Stream<String> texts(String value, Class<?> type, RecordComponent component) {
        if (type.isEnum()) {
            List<String> all = WireNames.all(type);
            return IntStream.range(1, all.size()).mapToObj(i -> all.get((all.indexOf(value) + i) % all.size()));
        } else if (type == LocalDate.class) {
            return Stream.of(1, 40).flatMap(days -> later(value, days));
        } else if (Model.versions().contains(value)) {
            return Model.versions().stream();
        }
        Property property = component.getAnnotation(Property.class);
        return property.maxItems() == 3 ? Stream.of("EUR", "USD") : property.example().contains("America/") ? Stream.of("Pacific/Apia")
                : Stream.empty();
    }

    private static Stream<String> later(String date, int days) {
        try {
            return Stream.of(LocalDate.parse(date).plusDays(days).toString());
        } catch (DateTimeException notADate) {
            return Stream.empty();
        }
    }

    /** Every number of a case. */
    private static JsonNode times(JsonNode node, BigDecimal factor) {
        if (!node.isObject()) {
            return node.isFloatingPointNumber() || node.isBigDecimal() || node.isInt()
                    ? JSON.numberNode(node.decimalValue().multiply(factor))
                    : node;
        }
        ObjectNode scaled = JSON.objectNode();
        node.properties().forEach(part -> scaled.set(part.getKey(), times(part.getValue(), factor)));
        return scaled;
    }

    /** Null where a part of the way is no object. */
    ObjectNode with(String pointer, JsonNode value) {
        ObjectNode copy = request.deepCopy();
        String[] path = pointer.substring(1).split("/");
        JsonNode at = copy;
        for (int i = 0; i < path.length - 1; i++) {
            JsonNode next = at.isArray() ? at.get(Integer.parseInt(path[i])) : at.get(path[i]);
            at = next == null && at instanceof ObjectNode owner ? owner.putObject(path[i]) : next;
        }
        String last = path[path.length - 1];
        if (at instanceof ObjectNode owner) {
            owner.set(last, value);
        } else if (at instanceof ArrayNode list) {
            list.set(Integer.parseInt(last), value);
        } else {
            return null;
        }
        return copy;
    }
}
