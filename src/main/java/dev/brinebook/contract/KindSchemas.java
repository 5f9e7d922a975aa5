// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import dev.brinebook.api.DiscriminatorValues;
import dev.brinebook.api.Property;
import io.swagger.v3.oas.models.media.Discriminator;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.Schema;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Shows a record that has kinds as a choice of schemas, each with the properties of its kind only. The record is flat, so what
 * is sent stays the same; the contract says which properties go together.
 */
final class KindSchemas {

    private final Class<?> type;
    private final DiscriminatorValues kinds;
    private final Schema<?> whole;
    private final boolean inRequests;

    /**
     * Prepares the schemas of a record that has kinds.
     *
     * @param whole the schema of all its properties, described
     */
    KindSchemas(Class<?> type, DiscriminatorValues kinds, Schema<?> whole, boolean inRequests) {
        this.type = type;
        this.kinds = kinds;
        this.whole = whole;
        this.inRequests = inRequests;
    }

    /** The choice under the name of the record, and a schema for each kind under that name behind its own. */
    @SuppressWarnings("rawtypes")
    Map<String, Schema> build() {
        Map<String, Schema> schemas = new LinkedHashMap<>();
        JsonSchema choice = new JsonSchema();
        choice.setDescription(whole.getDescription());
        Discriminator discriminator = new Discriminator().propertyName(kinds.property());
        kinds.bySchema().forEach((prefix, names) -> {
            String name = prefix + type.getSimpleName();
            String reference = "#/components/schemas/" + name;
            choice.addOneOfItem(new JsonSchema().$ref(reference));
            names.forEach(kind -> discriminator.mapping(kind, reference));
            schemas.put(name, of(names));
        });
        choice.setDiscriminator(discriminator);
        schemas.put(type.getSimpleName(), choice);
        return schemas;
    }

    @SuppressWarnings("rawtypes")
    private Schema of(List<String> names) {
        Map<String, Schema> properties = new LinkedHashMap<>();
        List<String> required = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
            Property property = component.getAnnotation(Property.class);
            String name = component.getName();
            if (name.equals(kinds.property())) {
                properties.put(name, chooser(names));
            } else if (DiscriminatorValues.belongs(property, names.get(0))) {
                properties.put(name, whole.getProperties().get(name));
            }
            // Required even where the service has a default: a discriminator cannot read a missing value.
            boolean discriminator = name.equals(kinds.property());
            if (properties.containsKey(name) && (discriminator || PropertySchemaWriter.isRequired(property, inRequests))) {
                required.add(name);
            }
        }
        JsonSchema schema = new JsonSchema();
        schema.setTypes(Set.of("object"));
        schema.setDescription(whole.getDescription() + (names.size() == 1
                ? " With the " + kinds.property() + " " + names.get(0) + "."
                : " With any " + kinds.property() + " listed here."));
        schema.setProperties(properties);
        schema.setRequired(required.isEmpty() ? null : required);
        PropertySchemaWriter.addAlternatives(schema, type);
        schema.setAdditionalProperties(whole.getAdditionalProperties());
        return schema;
    }

    private Schema<Object> chooser(List<String> names) {
        Schema<?> all = whole.getProperties().get(kinds.property());
        JsonSchema one = new JsonSchema();
        one.setTypes(all.getTypes());
        one.setDescription(names.size() == 1 ? "The kind of these properties: " + names.get(0) + "." : all.getDescription());
        one.setEnum(names.stream().map(Object.class::cast).toList());
        return one;
    }
}
