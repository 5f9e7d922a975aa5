// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import dev.brinebook.api.DiscriminatorValues;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Operation.QueryParameter;
import dev.brinebook.api.Property;
import dev.brinebook.api.WireNames;
import dev.brinebook.quantity.Quantity;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.Parameter;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** Parameters of a query, with the descriptions of the record that they are read into. */
final class QueryParameters {

    private QueryParameters() {
    }

    /** {@code query}, one of {@code all} that make a {@code request}. */
    static Parameter of(QueryParameter query, List<QueryParameter> all, Class<?> request) {
        if (query.isWhole()) {
            Schema<Object> json = DocumentBuilder.text();
            json.setContentMediaType(Operation.JSON);
            return new Parameter().in("query").name(query.name()).required(query.required()).description(query.description())
                    .schema(json).example(query.example());
        }
        List<RecordComponent> path = path(query.pointer(), request);
        RecordComponent last = path.get(path.size() - 1);
        Schema<Object> schema = new JsonSchema();
        schema.setTypes(Set.of(!query.number() ? "string" : last.getType() == Integer.class ? "integer" : "number"));
        if (last.getType().isEnum()) {
            schema.setEnum(choice(query, last, all));
        } else if (query.number() && !isQuantity(path)) {
            PropertySchemaWriter.bound(schema, last.getAnnotation(Property.class));
        }
        Object example = query.number() ? new BigDecimal(query.example()) : query.example();
        return new Parameter().in("query").name(query.name()).required(query.required())
                .description(description(query, request)).schema(schema).example(example);
    }

    static String description(QueryParameter query, Class<?> request) {
        List<RecordComponent> path = path(query.pointer(), request);
        boolean quantity = isQuantity(path);
        RecordComponent described = path.get(path.size() - (quantity ? 2 : 1));
        return query.description() + (query.number() ? PropertySchemaWriter.range(described.getAnnotation(Property.class), quantity) : "");
    }

    private static boolean isQuantity(List<RecordComponent> path) {
        return Quantity.class.isAssignableFrom(path.get(path.size() - 1).getDeclaringRecord());
    }

    /** What a choice offers: no kind that needs a property for which there is no parameter. */
    private static List<Object> choice(QueryParameter query, RecordComponent last, List<QueryParameter> all) {
        String owner = query.pointer().substring(0, query.pointer().lastIndexOf('/') + 1);
        List<RecordComponent> beside = List.of(last.getDeclaringRecord().getRecordComponents());
        return WireNames.all(last.getType()).stream().filter(name -> beside.stream().noneMatch(component -> {
            Property property = component.getAnnotation(Property.class);
            return property.kinds().length > 0 && property.required() && DiscriminatorValues.belongs(property, name)
                    && all.stream().noneMatch(other -> other.pointer().startsWith(owner + component.getName()));
        })).map(Object.class::cast).toList();
    }

    /** The components that a pointer leads through. */
    private static List<RecordComponent> path(String pointer, Class<?> request) {
        List<RecordComponent> path = new ArrayList<>();
        Class<?> type = request;
        for (String name : pointer.substring(1).split("/")) {
            RecordComponent next = Arrays.stream(type.getRecordComponents()).filter(one -> one.getName().equals(name)).findFirst()
                    .orElseThrow(() -> new IllegalStateException(pointer + " leads nowhere"));
            path.add(next);
            type = next.getType();
        }
        return path;
    }
}
