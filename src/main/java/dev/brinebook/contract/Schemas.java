// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.type.TypeFactory;
import dev.brinebook.api.DiscriminatorValues;
import dev.brinebook.api.JsonObject;
import dev.brinebook.api.WireNames;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.ListedOnce;
import dev.brinebook.text.Message;
import io.swagger.v3.core.converter.AnnotatedType;
import io.swagger.v3.core.converter.ModelConverter;
import io.swagger.v3.core.converter.ModelConverterContext;
import io.swagger.v3.core.converter.ModelConverters;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.Schema;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The schemas of the wire records: their shape by swagger-core, their facts by each component's {@code Property}. */
final class Schemas {

    private final Map<String, Class<?>> inRequests = new TreeMap<>();
    private final Map<String, Class<?>> records = new TreeMap<>();
    /** Enums with a schema of their own. */
    private final Map<String, Class<?>> lists = new TreeMap<>();
    /** How every number of an answer is rounded; of an amount of money, to the minor unit of its currency (ISO 4217). */
    private static final Map<String, Object> PRECISION = new TreeMap<>(Map.of("significantDigits", Rounding.SIGNIFICANT_DIGITS,
            "money", "minorUnit"));

    private final Set<Class<?>> answers = new LinkedHashSet<>();
    private final Set<Class<?>> roots = new LinkedHashSet<>();
    private final ModelConverters converters = new ModelConverters(true);

    Schemas() {
        converters.addConverter(new WireTexts());
    }

    /** An answer that is calculated, every number of which is rounded once. */
    void addCalculated(Class<?> type) {
        answers.add(type);
        addAnswer(type);
    }

    void addRequest(Class<?> type) {
        collect(type, inRequests);
        addAnswer(type);
    }

    void addAnswer(Class<?> type) {
        roots.add(type);
        collect(type, records);
    }

    /** All schemas by name, sorted. */
    @SuppressWarnings("rawtypes")
    Map<String, Schema> build() {
        Map<String, Schema> schemas = new TreeMap<>();
        roots.forEach(type -> converters.readAll(type).forEach(schemas::putIfAbsent));
        schemas.keySet().retainAll(records.keySet());
        lists.forEach((name, type) -> putNew(name, names(type).description(type.getAnnotation(ListedOnce.class).value()), schemas));
        records.forEach((name, type) -> PropertySchemaWriter.apply(schemas.get(name), type, inRequests.containsKey(name)));
        answers.forEach(type -> schemas.get(type.getSimpleName()).addExtension("x-precision", PRECISION));
        records.forEach((name, type) -> {
            DiscriminatorValues kinds = DiscriminatorValues.of(type);
            if (!kinds.isEmpty()) {
                Schema<?> whole = schemas.remove(name);
                new KindSchemas(type, kinds, whole, inRequests.containsKey(name)).build()
                        .forEach((own, schema) -> putNew(own, schema, schemas));
            }
        });
        return schemas;
    }

    @SuppressWarnings("rawtypes")
    private static void putNew(String name, Schema schema, Map<String, Schema> schemas) {
        if (schemas.put(name, schema) != null) {
            throw new IllegalStateException("two schemas are called " + name);
        }
    }

    private static Schema<Object> names(Class<?> enumeration) {
        Schema<Object> names = DocumentBuilder.text();
        names.setEnum(List.copyOf(WireNames.all(enumeration)));
        return names;
    }

    /** Collects a record and all its parts; equal simple names would overwrite each other, so they are refused. */
    private void collect(Class<?> type, Map<String, Class<?>> into) {
        Class<?> other = into.put(type.getSimpleName(), type);
        if (other != null && other != type) {
            throw new IllegalStateException(type + " and " + other + " have the same name on the wire");
        }
        if (other == null) {
            for (RecordComponent component : type.getRecordComponents()) {
                collectFrom(component.getGenericType(), into);
            }
        }
    }

    private void collectFrom(Type type, Map<String, Class<?>> into) {
        if (type instanceof Class<?> c && c.isRecord()) {
            collect(c, into);
        } else if (type instanceof Class<?> c && c.isAnnotationPresent(ListedOnce.class)) {
            lists.put(c.getSimpleName(), c);
        } else if (type instanceof ParameterizedType generic) {
            for (Type argument : generic.getActualTypeArguments()) {
                collectFrom(argument, into);
            }
        }
    }

    /** Enums by their names on the wire; messages as the text that they are once written. */
    private static final class WireTexts implements ModelConverter {

        @Override
        @SuppressWarnings("rawtypes")
        public Schema resolve(AnnotatedType type, ModelConverterContext context, Iterator<ModelConverter> chain) {
            JavaType java = TypeFactory.defaultInstance().constructType(type.getType());
            if (java.hasRawClass(Message.class)) {
                JsonSchema text = new JsonSchema();
                text.setTypes(Set.of("string"));
                return text;
            }
            if (java.hasRawClass(JsonObject.class)) {
                JsonSchema object = new JsonSchema();
                object.setTypes(Set.of("object"));
                object.setAdditionalProperties(Boolean.TRUE);
                return object;
            }
            if (java.isEnumType()) {
                return java.getRawClass().isAnnotationPresent(ListedOnce.class) ? DocumentBuilder.reference(java.getRawClass())
                        : names(java.getRawClass());
            }
            return chain.hasNext() ? chain.next().resolve(type, context, chain) : null;
        }
    }
}
