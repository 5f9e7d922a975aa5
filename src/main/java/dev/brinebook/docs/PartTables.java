// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.DefaultValue;
import dev.brinebook.api.DiscriminatorValues;
import dev.brinebook.api.JsonObject;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.WireNames;
import dev.brinebook.text.Message;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** The table of a record of a request or an answer, from what {@link Property} says of each component. */
final class PartTables {

    /**
     * One record.
     *
     * @param name its name, as the contract has it
     * @param prefix what the ids of its rows begin with
     * @param about what it is
     * @param rows one for each property
     */
    record Part(String name, String prefix, String about, List<Row> rows) {
    }

    /**
     * One property. What does not apply is empty.
     *
     * @param name its name
     * @param type its type, in words
     * @param part the record that it holds, which has a page of its own
     * @param choices the closed list it is one of, if that is short, else {@code manyChoices}
     * @param manyChoices see {@code choices}
     * @param range range, unit and length
     * @param presence whether it is required, or when it is absent
     * @param fallback the default
     * @param what its description
     * @param example an example
     */
    record Row(String name, String type, String part, List<String> choices,
            List<String> manyChoices, String range, String presence, String fallback, String what, String example) {
    }

    /** Longer lists are folded. */
    private static final int FEW_CHOICES = 8;

    private PartTables() {
    }

    /**
     * The table of a record.
     *
     * @param prefix what the ids of its rows begin with, so that a page may hold two tables
     * @param presence whether a property is required, or when it is absent, in words
     */
    static Part of(Class<?> type, String prefix, Function<Property, String> presence) {
        return new Part(type.getSimpleName(), prefix, type.getAnnotation(SchemaDescription.class).value(),
                Arrays.stream(type.getRecordComponents()).map(component -> row(component, presence)).toList());
    }

    private static Row row(RecordComponent component, Function<Property, String> presence) {
        Property property = component.getAnnotation(Property.class);
        boolean list = component.getType() == List.class;
        Class<?> type = PartIndex.held(component);
        List<String> choices = type.isEnum() ? WireNames.all(type) : List.of();
        boolean few = choices.size() <= FEW_CHOICES;
        return new Row(component.getName(), type.isRecord() ? list ? "list of" : "" : word(type, list),
                type.isRecord() ? type.getSimpleName() : "",
                few ? choices : List.of(), few ? List.of() : choices, Ranges.inWords(property, list),
                presence.apply(property) + ofKinds(component, property), DefaultValue.of(property).inWords(), property.value(),
                property.example());
    }

    /** The kinds of its record that a property belongs to, when it does not belong to all. */
    private static String ofKinds(RecordComponent component, Property property) {
        String chooser = property.kinds().length + property.exceptKinds().length == 0 ? ""
                : DiscriminatorValues.of(component.getDeclaringRecord()).property();
        return (property.kinds().length == 0 ? "" : ", with " + chooser + " " + String.join(" or ", property.kinds()))
                + (property.exceptKinds().length == 0 ? "" : ", not with " + chooser + " "
                        + String.join(" or ", property.exceptKinds()));
    }

    private static String word(Class<?> type, boolean list) {
        if (type.isEnum()) {
            return list ? "list of choices" : "choice";
        } else if (type == BigDecimal.class) {
            return list ? "list of numbers" : "number";
        } else if (type == Integer.class || type == Long.class) {
            return list ? "list of whole numbers" : "whole number";
        } else if (type == LocalDate.class) {
            return list ? "list of dates" : "date";
        } else if (type == Boolean.class) {
            return "true or false";
        } else if (type == String.class || type == Message.class) {
            return list ? "list of texts" : "text";
        } else if (type == JsonObject.class) {
            return "object";
        }
        throw new IllegalStateException(type + " has no word");
    }
}
