// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.api.Discriminator;
import dev.brinebook.api.DiscriminatorValues;
import dev.brinebook.api.JsonObject;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.WireNames;
import dev.brinebook.model.Model;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.Unit;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;

/**
 * Makes requests at random from what each record says of its properties, with a liking for the corners of the ranges,
 * and repairs what the properties say of each other from the faults that an answer reports.
 */
public final class RandomRequests {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private final Random random;
    private final Predicate<Unit> units;

    public RandomRequests(long seed) {
        this(new Random(seed));
    }

    public RandomRequests(Random random) {
        this(random, unit -> true);
    }

    /** With quantities in some units only. */
    RandomRequests(Random random, Predicate<Unit> units) {
        this.random = random;
        this.units = units;
    }

    public ObjectNode request(Class<?> type) {
        ObjectNode node = JSON.objectNode();
        String kind = kind(type);
        for (RecordComponent component : type.getRecordComponents()) {
            Property property = component.getAnnotation(Property.class);
            if (kind != null && component.isAnnotationPresent(Discriminator.class)) {
                node.put(component.getName(), kind);
            } else if (DiscriminatorValues.belongs(property, kind) && (property.required() || random.nextInt(5) < 2)) {
                node.set(component.getName(), value(component.getGenericType(), property));
            }
        }
        return node;
    }

    /** A kind of the record, null where it has none. */
    private String kind(Class<?> type) {
        List<String> kinds = Arrays.stream(type.getRecordComponents())
                .filter(component -> component.isAnnotationPresent(Discriminator.class))
                .flatMap(component -> WireNames.all(component.getType()).stream()).toList();
        return kinds.isEmpty() ? null : kinds.get(random.nextInt(kinds.size()));
    }

    /** Leaves out what must not be combined with another, adds what is missing, and puts another value for any other fault. */
    public void repair(ObjectNode request, Class<?> type, List<Violation> faults) {
        for (Violation fault : faults) {
            String[] path = fault.pointer().substring(Math.min(1, fault.pointer().length())).split("/");
            repair(request, type, path, 0, fault.code());
        }
        putPeriodsInOrder(request);
    }

    /** Dates at random seldom make a period of a few years, and one after the other. */
    private void putPeriodsInOrder(JsonNode node) {
        LocalDate day = LocalDate.of(1950 + random.nextInt(200), 1, 1);
        for (String name : List.of("before", "after")) {
            if (node.path(name).has("control")) {
                ObjectNode period = (ObjectNode) node.get(name);
                period.put("from", day.toString());
                day = day.plusDays(7 + random.nextInt(1_090));
                period.put("to", day.toString());
            }
        }
        node.forEach(this::putPeriodsInOrder);
    }

    private void repair(JsonNode node, Class<?> type, String[] path, int at, Code code) {
        RecordComponent component = Arrays.stream(type.getRecordComponents())
                .filter(c -> c.getName().equals(path[at])).findFirst().orElse(null);
        // A list repaired before may be shorter now.
        if (component == null || node == null) {
            return;
        }
        ObjectNode owner = (ObjectNode) node;
        Property property = component.getAnnotation(Property.class);
        boolean last = at == path.length - 1;
        Class<?> inner = record(component.getGenericType());
        if (last && code == Code.INCONSISTENT && !property.required()) {
            owner.remove(path[at]);
        } else if (last || inner == null || !owner.has(path[at])) {
            owner.set(path[at], value(component.getGenericType(), property));
        } else if (owner.get(path[at]).isArray() && at + 2 < path.length) {
            repair(owner.get(path[at]).get(Integer.parseInt(path[at + 1])), inner, path, at + 2, code);
        } else if (owner.get(path[at]).isObject() && !Quantity.class.isAssignableFrom(inner)) {
            repair(owner.get(path[at]), inner, path, at + 1, code);
        } else {
            owner.set(path[at], value(component.getGenericType(), property));
        }
    }

    /** The record of a property or of the elements of its list; null where it is none. */
    public static Class<?> record(Type type) {
        Type bare = type instanceof ParameterizedType generic ? generic.getActualTypeArguments()[0] : type;
        return bare instanceof Class<?> c && c.isRecord() ? c : null;
    }

    /** A value that fits a property. */
    public JsonNode value(RecordComponent component) {
        return value(component.getGenericType(), component.getAnnotation(Property.class));
    }

    /** An element that fits a property that is a list. */
    public JsonNode element(RecordComponent list) {
        return value(((ParameterizedType) list.getGenericType()).getActualTypeArguments()[0], list.getAnnotation(Property.class));
    }

    private JsonNode value(Type type, Property property) {
        if (type instanceof ParameterizedType generic) {
            ArrayNode list = JSON.arrayNode();
            int most = Math.min(property.maxItems(), property.minItems() + 3);
            int count = property.minItems() + random.nextInt(most - property.minItems() + 1);
            for (int i = 0; i < count; i++) {
                list.add(value(generic.getActualTypeArguments()[0], property));
            }
            return list;
        }
        Class<?> c = (Class<?>) type;
        if (Quantity.class.isAssignableFrom(c)) {
            return quantity(c.getRecordComponents()[1].getType(), property);
        }
        if (c.isRecord()) {
            return request(c);
        }
        if (c.isEnum()) {
            Object[] constants = c.getEnumConstants();
            return JSON.textNode(WireNames.of((Enum<?>) constants[random.nextInt(constants.length)]));
        }
        if (c == Boolean.class) {
            return JSON.booleanNode(random.nextBoolean());
        }
        if (c == String.class) {
            return JSON.textNode(text(property));
        }
        if (c == JsonObject.class) {
            ObjectNode request = JSON.objectNode();
            request.putObject("hardness").put("value", random.nextInt(500)).put("unit", WireNames.of(HardnessUnit.MG_PER_L));
            return request;
        }
        if (c == LocalDate.class) {
            return JSON.textNode(LocalDate.of(1900, 1, 1).plusDays(random.nextInt(109_000)).toString());
        }
        return number(c, property);
    }

    /** The calculator of a case, a version, a currency, a place, any hour or midnight within a month, or a name. */
    private String text(Property property) {
        if (property.example().equals("\"assess\"")) {
            return "convertHardness";
        }
        if (Model.versions().contains(property.example().replace("\"", ""))) {
            return Model.versions().get(random.nextInt(Model.versions().size()));
        }
        if (property.example().contains("America/")) {
            return List.of("UTC", "Europe/Berlin", "Pacific/Apia", "Australia/Lord_Howe").get(random.nextInt(4));
        }
        if (property.example().matches("\"\\d{4}-\\d\\d-\\d\\dT.*")) {
            LocalDateTime hour = LocalDateTime.of(2026, 10, 20, 0, 0).plusHours(random.nextInt(24 * 30));
            return random.nextBoolean() ? hour.toString() : hour.toLocalDate().toString();
        }
        return property.maxItems() == 3 ? "USD" : "n" + random.nextInt(1_000);
    }

    private JsonNode number(Class<?> type, Property property) {
        double value = within(property.min(), Math.min(property.max(), 1e6));
        return type == BigDecimal.class ? JSON.numberNode(rounded(value)) : JSON.numberNode((long) Math.ceil(value));
    }

    private ObjectNode quantity(Class<?> unitType, Property property) {
        Unit[] all = Arrays.stream(unitType.getEnumConstants()).map(Unit.class::cast).toArray(Unit[]::new);
        Unit[] some = Arrays.stream(all).filter(units).toArray(Unit[]::new);
        Unit unit = some[random.nextInt(some.length)];
        Unit stated = Arrays.stream(all).filter(u -> u.symbol().equals(property.unit())).findFirst().orElse(unit);
        double value = unit.fromBase(stated.toBase(within(property.min(), Math.min(property.max(), 1e6))));
        return JSON.objectNode().put("value", rounded(value)).put("unit", unit.symbol());
    }

    /** A corner of the range, or anything inside, small values as likely as large ones. */
    private double within(double min, double max) {
        double low = Math.max(min, -1e6);
        return switch (random.nextInt(6)) {
            case 0 -> low;
            case 1 -> max;
            case 2, 3 -> low + (max - low) * random.nextDouble();
            default -> low + (max - low) * Math.pow(10, -4 * random.nextDouble());
        };
    }

    private static BigDecimal rounded(double value) {
        return new BigDecimal(value).round(new MathContext(9, RoundingMode.HALF_EVEN));
    }
}
