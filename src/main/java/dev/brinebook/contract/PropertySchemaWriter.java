// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.brinebook.api.AlternativeRule;
import dev.brinebook.api.DefaultValue;
import dev.brinebook.api.ListLength;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.quantity.Quantity;
import io.swagger.v3.oas.models.media.Schema;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Writes what {@link Property} says of each component into the schema of its record. */
final class PropertySchemaWriter {

    private static final ObjectMapper JSON = new ObjectMapper();

    private PropertySchemaWriter() {
    }

    @SuppressWarnings({"rawtypes", "unchecked"})
    static void apply(Schema<?> schema, Class<?> type, boolean inRequests) {
        List<String> required = new ArrayList<>();
        Map<String, Schema> properties = new LinkedHashMap<>();
        for (RecordComponent component : type.getRecordComponents()) {
            Property property = component.getAnnotation(Property.class);
            Schema<?> described = schema.getProperties().get(component.getName());
            if (property == null || described == null) {
                throw new IllegalStateException(type + "." + component.getName() + " is not described");
            }
            describe((Schema<Object>) described, component, property);
            properties.put(component.getName(), described);
            if (isRequired(property, inRequests)) {
                required.add(component.getName());
            }
        }
        schema.setProperties(properties);
        schema.setRequired(required.isEmpty() ? null : required);
        schema.setDescription(type.getAnnotation(SchemaDescription.class).value());
        addAlternatives(schema, type);
        if (inRequests) {
            schema.setAdditionalProperties(Boolean.FALSE);
        }
    }

    /** The rules of the record that are about properties of this schema. */
    static void addAlternatives(Schema<?> schema, Class<?> type) {
        List<Map<String, Object>> rules = AlternativeRule.of(type).stream().filter(rule -> rule.concerns(schema.getProperties().keySet()))
                .map(rule -> Map.of("required", rule.required(), rule.several() ? "anyOf" : "oneOf", (Object) rule.alternatives()))
                .map(rule -> (Map<String, Object>) new TreeMap<>(rule).descendingMap()).toList();
        if (!rules.isEmpty()) {
            schema.addExtension("x-alternatives", rules);
        }
    }

    /** Whether the property is always there; where it belongs to some kinds only, of these. */
    static boolean isRequired(Property property, boolean inRequests) {
        return inRequests ? property.required() : property.optional().isEmpty();
    }

    private static void describe(Schema<Object> schema, RecordComponent component, Property property) {
        Class<?> type = element(component);
        boolean quantity = Quantity.class.isAssignableFrom(type);
        Schema<?> one = schema.getItems() == null ? schema : schema.getItems();
        if (type.isRecord()) {
            range(property).ifPresent(range -> one.addExtension("x-range", range));
        } else {
            bound(one, property);
        }
        count(schema, component, property);
        if ("int32".equals(schema.getFormat())) {
            schema.setFormat(null); // its range says more
        }
        schema.setDescription(sentence(property, quantity));
        DefaultValue.of(property).asData(type).ifPresent(value -> schema.addExtension("x-default", value));
        // One of a closed list, and true or false, are their own examples.
        if (!property.example().isEmpty() && type != Boolean.class && !type.isEnum()) {
            schema.setExamples(List.of(json(property.example())));
        }
    }

    /** What a component holds; of a list, what each element is. */
    private static Class<?> element(RecordComponent component) {
        return component.getGenericType() instanceof ParameterizedType list && list.getActualTypeArguments()[0] instanceof Class<?> each
                ? each : component.getType();
    }

    /** The range of a number with a unit, as data; without the unit, it is that of whatever unit the number has. */
    static Optional<Map<String, Object>> range(Property property) {
        Map<String, Object> range = new LinkedHashMap<>();
        if (property.min() != Double.NEGATIVE_INFINITY) {
            range.put(property.aboveMin() ? "exclusiveMinimum" : "minimum", plain(property.min()));
        }
        if (property.max() != Double.POSITIVE_INFINITY) {
            range.put("maximum", plain(property.max()));
        }
        if (range.isEmpty()) {
            return Optional.empty();
        }
        if (!property.unit().isEmpty()) {
            range.put("unit", property.unit());
        }
        return Optional.of(range);
    }

    static void bound(Schema<?> schema, Property property) {
        if (!property.unit().isEmpty()) {
            schema.addExtension("x-unit", property.unit());
        }
        if (property.min() != Double.NEGATIVE_INFINITY) {
            BigDecimal min = plain(property.min());
            if (property.aboveMin()) {
                schema.setExclusiveMinimumValue(min);
            } else {
                schema.setMinimum(min);
            }
        }
        if (property.max() != Double.POSITIVE_INFINITY) {
            schema.setMaximum(plain(property.max()));
        }
    }

    private static void count(Schema<Object> schema, RecordComponent component, Property property) {
        boolean list = schema.getItems() != null;
        if (property.minItems() > 0) {
            if (list) {
                schema.setMinItems(property.minItems());
            } else {
                schema.setMinLength(property.minItems());
            }
        }
        if (list) {
            schema.setMaxItems(ListLength.most(component));
        } else if (property.maxItems() < Integer.MAX_VALUE) {
            schema.setMaxLength(property.maxItems());
        }
    }

    /**
     * A default is written in words, and as {@code x-default} where it does not depend on other values, never as the keyword:
     * generated clients would send the value of the
     * keyword, or ask their callers for it, and it would be treated as given.
     */
    private static String sentence(Property property, boolean quantity) {
        StringBuilder text = new StringBuilder(property.value()).append(range(property, quantity));
        String byDefault = DefaultValue.of(property).inWords();
        if (!byDefault.isEmpty()) {
            text.append(" Default: ").append(byDefault).append('.');
        }
        if (!property.optional().isEmpty()) {
            text.append(" Absent ").append(property.optional()).append('.');
        }
        return text.toString();
    }

    /** The range of a quantity, or the unit of a plain number, as a sentence behind another. */
    static String range(Property property, boolean quantity) {
        if (quantity && property.max() != Double.POSITIVE_INFINITY) {
            return (property.aboveMin() ? " Above " : " From ") + Text.number(property.min()) + " to "
                    + Text.number(property.max()) + " " + property.unit() + ".";
        }
        return property.unit().isEmpty() ? "" : " In " + property.unit() + ".";
    }

    private static BigDecimal plain(double number) {
        BigDecimal plain = BigDecimal.valueOf(number).stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0) : plain;
    }

    private static Object json(String text) {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("not JSON: " + text, e);
        }
    }
}
