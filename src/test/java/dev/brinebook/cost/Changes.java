// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.cost;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.http.RandomRequests;
import dev.brinebook.quantity.Quantity;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;

/** Changes a request at random, where it keeps to what its records say and where it does not. */
final class Changes {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final List<String> NAMES = List.of("name", "sku");
    private static final List<JsonNode> EXTREMES = List.of(JSON.numberNode(0), JSON.numberNode(-1), JSON.numberNode(Long.MAX_VALUE),
            JSON.numberNode(new BigDecimal("1e308")), JSON.numberNode(new BigDecimal("1e-308")),
            JSON.numberNode(new BigDecimal("1e999999999")), JSON.numberNode(new BigDecimal("1e-999999999")),
            JSON.numberNode(new BigDecimal("9".repeat(60))), JSON.nullNode(), JSON.booleanNode(true), JSON.textNode(""),
            JSON.textNode("2199-12-31"), JSON.textNode("x".repeat(4_000)), JSON.textNode("\u202E<&\"\\\u0000".repeat(500)));
    private static final int DEEPEST = 40;
    private static final Pattern MOST = Pattern.compile("must be at most (\\d+) ");

    private final Random random;
    private final RandomRequests requests;
    private int names;

    Changes(Random random) {
        this.random = random;
        this.requests = new RandomRequests(random);
    }

    /** A property of a record, and the object that has it or may have it. */
    private record Place(ObjectNode owner, RecordComponent component) {

        JsonNode value() {
            return owner.get(component.getName());
        }

        Property property() {
            return component.getAnnotation(Property.class);
        }
    }

    /** A request at random. */
    ObjectNode request(Class<?> type) {
        return requests.request(type);
    }

    /** A copy of a request, somewhat other. */
    ObjectNode fitting(JsonNode request, Class<?> type) {
        ObjectNode changed = request.deepCopy();
        for (int i = random.nextInt(4); i >= 0; i--) {
            List<Place> places = new ArrayList<>();
            collect(changed, type, places);
            change(places.get(random.nextInt(places.size())));
        }
        return changed;
    }

    private static void collect(JsonNode node, Class<?> type, List<Place> places) {
        if (!(node instanceof ObjectNode owner) || Quantity.class.isAssignableFrom(type)) {
            return;
        }
        for (RecordComponent component : type.getRecordComponents()) {
            Place place = new Place(owner, component);
            places.add(place);
            Class<?> inner = RandomRequests.record(component.getGenericType());
            if (inner != null && place.value() != null) {
                (place.value().isArray() ? place.value() : List.of(place.value())).forEach(part -> collect(part, inner, places));
            }
        }
    }

    private void change(Place place) {
        String name = place.component().getName();
        JsonNode now = place.value();
        boolean list = now != null && now.isArray() && place.component().getGenericType() instanceof ParameterizedType;
        switch (random.nextInt(list ? 8 : 5)) {
            case 0 -> place.owner().remove(name);
            case 1, 2 -> place.owner().set(name, requests.value(place.component()));
            case 3 -> place.owner().set(name, limit(place));
            case 4 -> place.owner().set(name, scaled(now == null ? requests.value(place.component()) : now));
            default -> grow((ArrayNode) now, place);
        }
    }

    /** As many, as large or as small as may be. */
    private JsonNode limit(Place place) {
        double end = random.nextInt(4) == 0 ? place.property().min() : place.property().max();
        JsonNode value = place.value() == null ? requests.value(place.component()) : place.value();
        if (value.isIntegralNumber() && Double.isFinite(end)) {
            return JSON.numberNode((long) end);
        }
        return value.isNumber() && Double.isFinite(end) ? JSON.numberNode(BigDecimal.valueOf(end)) : value;
    }

    private JsonNode scaled(JsonNode value) {
        if (value.isObject() && value.path("value").isNumber()) {
            return ((ObjectNode) value.deepCopy()).set("value", scaled(value.get("value")));
        }
        if (!value.isNumber()) {
            return value;
        }
        double factor = Math.pow(10, random.nextGaussian() / 2);
        return value.isIntegralNumber() ? JSON.numberNode(Math.round(value.doubleValue() * factor))
                : JSON.numberNode(BigDecimal.valueOf((float) (value.doubleValue() * factor)));
    }

    /** Makes a list longer, up to all that may be, by new elements or by some like those there. */
    private void grow(ArrayNode list, Place place) {
        int most = Math.min(place.property().maxItems(), 20_000);
        int wanted = random.nextInt(3) == 0 ? most : Math.min(most, list.size() * 2 + 1);
        boolean alike = list.size() > 0 && random.nextBoolean();
        while (list.size() < wanted) {
            JsonNode element = alike ? list.get(random.nextInt(list.size())).deepCopy() : requests.element(place.component());
            list.add(element);
        }
        list.forEach(this::rename);
    }

    /** Elements of a list must differ in name. */
    private void rename(JsonNode element) {
        if (element instanceof ObjectNode object) {
            NAMES.stream().filter(object::has).forEach(name -> object.put(name, "n" + names++));
        }
    }

    /** A copy of any JSON, changed at places and in ways that need not fit. */
    JsonNode wild(JsonNode body) {
        JsonNode changed = body.deepCopy();
        for (int i = random.nextInt(3); i >= 0; i--) {
            List<JsonNode> containers = new ArrayList<>();
            containers(changed, containers);
            JsonNode container = containers.get(random.nextInt(containers.size()));
            if (container instanceof ArrayNode list) {
                wild(list);
            } else {
                wild((ObjectNode) container);
            }
        }
        return changed;
    }

    private static void containers(JsonNode node, List<JsonNode> found) {
        if (node.isContainerNode()) {
            found.add(node);
            node.forEach(part -> containers(part, found));
        }
    }

    private void wild(ArrayNode list) {
        JsonNode element = list.isEmpty() || random.nextInt(3) == 0 ? extreme() : list.get(random.nextInt(list.size()));
        for (int i = many(element); i > 0; i--) {
            list.add(element.deepCopy());
        }
    }

    private void wild(ObjectNode object) {
        List<String> known = new ArrayList<>();
        object.fieldNames().forEachRemaining(known::add);
        String name = known.isEmpty() ? "a" : known.get(random.nextInt(known.size()));
        switch (random.nextInt(5)) {
            case 0 -> object.set(name, extreme());
            case 1 -> object.set(name, nested(object.get(name)));
            case 2 -> {
                ArrayNode list = JSON.arrayNode();
                object.set(name, list.add(object.has(name) ? object.get(name) : extreme()));
                wild(list);
            }
            case 3 -> object.put(name, "ab,\u00E4\n".repeat(1 + random.nextInt(800)));
            default -> {
                JsonNode value = random.nextBoolean() ? JSON.numberNode(1) : extreme();
                String start = random.nextBoolean() ? name : "k".repeat(1 + random.nextInt(100));
                for (int i = many(value) / 3; i > 0; i--) {
                    object.set(start + i, value.deepCopy());
                }
            }
        }
    }

    private JsonNode extreme() {
        return random.nextInt(4) == 0 ? nested(JSON.numberNode(1)) : EXTREMES.get(random.nextInt(EXTREMES.size()));
    }

    private JsonNode nested(JsonNode inside) {
        JsonNode node = inside == null ? JSON.objectNode() : inside;
        boolean lists = random.nextBoolean();
        for (int i = random.nextInt(DEEPEST); i >= 0; i--) {
            node = lists ? JSON.arrayNode().add(node) : JSON.objectNode().set("a", node);
        }
        return node;
    }

    /** How often a value is put; now and then as often as fits. */
    private int many(JsonNode value) {
        int most = Trial.MAX_BYTES / (value.toString().length() + 8);
        return random.nextBoolean() ? most : 1 + random.nextInt(most + 1);
    }

    /** A copy of a text, in which parts are put twice or very often, left out, or others put in their place. */
    String text(String text) {
        int start = random.nextInt(text.length() + 1);
        int end = Math.min(text.length(), start + 1 + random.nextInt(40));
        String part = text.substring(Math.min(start, end), end);
        String put = switch (random.nextInt(5)) {
            case 0 -> "";
            case 1 -> part + part;
            case 2 -> part.repeat(1 + random.nextInt(Trial.MAX_BYTES / (part.length() + 1)));
            case 3 -> List.of("1e308", "\"", ",", "\n", "-", "9".repeat(60), "{", "[").get(random.nextInt(8))
                    .repeat(1 + random.nextInt(random.nextBoolean() ? 1 : 2_000));
            default -> lines(text);
        };
        return text.substring(0, Math.min(start, end)) + put + text.substring(end);
    }

    /** The last line again and again, its digits changed. */
    private String lines(String text) {
        String last = text.strip().substring(text.strip().lastIndexOf('\n') + 1);
        StringBuilder lines = new StringBuilder();
        for (int i = random.nextInt(Trial.MAX_BYTES / (last.length() + 1)); i > 0; i--) {
            lines.append(last.chars().map(c -> Character.isDigit(c) ? '0' + random.nextInt(10) : c)
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)).append('\n');
        }
        return lines.toString();
    }

    /** Puts in order what an answer found at fault, where it says how; gives whether anything was. */
    boolean repair(ObjectNode request, Class<?> type, JsonNode problem, Map<String, Code> codes) {
        List<JsonNode> errors = StreamSupport.stream(problem.path("errors").spliterator(), false).limit(100).toList();
        boolean repaired = false;
        for (JsonNode error : errors) {
            String pointer = error.path("pointer").asText();
            Code code = codes.get(error.path("code").asText());
            Matcher most = MOST.matcher(error.path("message").asText());
            if (code == Code.IMPOSSIBLE && most.lookingAt() && pointer.lastIndexOf('/') >= 0) {
                JsonNode owner = request.at(pointer.substring(0, pointer.lastIndexOf('/')));
                if (owner instanceof ObjectNode object) {
                    object.put(pointer.substring(pointer.lastIndexOf('/') + 1), Long.parseLong(most.group(1)));
                    repaired = true;
                }
            } else if (code != Code.IMPOSSIBLE && code != Code.UNKNOWN_FIELD) {
                requests.repair(request, type, List.of(new Violation(pointer, code, null)));
                repaired = true;
            }
        }
        return repaired;
    }

    /** A property of another request of the same operation in the place of this one's. */
    ObjectNode crossed(JsonNode one, JsonNode other) {
        ObjectNode changed = one.deepCopy();
        List<String> names = new ArrayList<>();
        other.fieldNames().forEachRemaining(names::add);
        names.stream().filter(name -> random.nextInt(3) == 0).forEach(name -> changed.set(name, other.get(name).deepCopy()));
        return changed;
    }

    boolean chance(int oneOf) {
        return random.nextInt(oneOf) == 0;
    }

    <T> T any(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    <T> T any(T[] values) {
        return any(Arrays.asList(values));
    }
}
