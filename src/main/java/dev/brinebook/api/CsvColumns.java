// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.quantity.Unit;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Requests and answers as rows of a table: a column for every plain value, at any depth. A list of plain values is one
 * cell; an answer's list of one quantity in every unit has a column for each unit, by its symbol; any other list of objects or of
 * quantities has none.
 */
public final class CsvColumns {

    private static final ClassValue<List<CsvColumn>> OF_REQUESTS = new ClassValue<>() {
        @Override
        protected List<CsvColumn> computeValue(Class<?> type) {
            return of(type, false);
        }
    };
    private static final ClassValue<List<CsvColumn>> OF_ANSWERS = new ClassValue<>() {
        @Override
        protected List<CsvColumn> computeValue(Class<?> type) {
            return of(type, true);
        }
    };
    private static final ClassValue<Optional<String>> MISSING = new ClassValue<>() {
        @Override
        protected Optional<String> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents())
                    .filter(component -> component.getAnnotation(Property.class).required())
                    .flatMap(component -> missing(component).stream()).findFirst();
        }
    };

    private final boolean answers;
    private final List<CsvColumn> found = new ArrayList<>();

    private CsvColumns(boolean answers) {
        this.answers = answers;
    }

    /** Of a request; a part that needs a list of objects has no column at all, as no row could hold it whole. */
    public static List<CsvColumn> ofRequest(Class<? extends Record> type) {
        return OF_REQUESTS.get(type);
    }

    /** Of an answer; its cautions are one cell of their codes. */
    public static List<CsvColumn> ofAnswer(Class<? extends Record> type) {
        return OF_ANSWERS.get(type);
    }

    private static List<CsvColumn> of(Class<?> type, boolean answers) {
        CsvColumns columns = new CsvColumns(answers);
        columns.add(type, List.of(), null, !answers);
        return List.copyOf(columns.found);
    }

    /** The name of a property that every request has and no column can hold, if there is one. */
    public static Optional<String> missing(Class<?> type) {
        return MISSING.get(type);
    }

    private static Optional<String> missing(RecordComponent component) {
        if (component.getType() == JsonObject.class) {
            return Optional.of(component.getName());
        }
        if (isPart(component.getType())) {
            return missing(component.getType()).map(below -> component.getName() + "." + below);
        }
        return isList(component) && !plain(element(component)) ? Optional.of(component.getName()) : Optional.empty();
    }

    private void add(Class<?> type, List<String> path, Property amount, boolean required) {
        for (RecordComponent component : type.getRecordComponents()) {
            Property property = component.getAnnotation(Property.class);
            List<String> below = new ArrayList<>(path);
            below.add(component.getName());
            boolean always = required && property.required();
            if (component.getType() == JsonObject.class) {
                continue; // an object of any shape has no column
            }
            if (isPart(component.getType())) {
                if (answers || missing(component.getType()).isEmpty()) {
                    add(component.getType(), below, isAmount(component.getType()) ? property : null, always);
                }
            } else if (!isList(component) || plain(element(component)) || isOfCautions(component)) {
                boolean list = isList(component);
                found.add(new CsvColumn(String.join(".", below), below, list ? element(component) : component.getType(), list,
                        always, property, amount));
            } else {
                addUnits(component, below);
            }
        }
    }

    /** A column for each unit of an answer's list that has one quantity in every unit. */
    private void addUnits(RecordComponent component, List<String> path) {
        Property property = component.getAnnotation(Property.class);
        if (!answers || !isList(component) || !Unit.class.isAssignableFrom(property.eachOf())
                || property.minItems() < property.eachOf().getEnumConstants().length) {
            return;
        }
        for (String symbol : WireNames.all(property.eachOf())) {
            List<String> below = new ArrayList<>(path);
            below.add(symbol);
            found.add(new CsvColumn(String.join(".", below), below, BigDecimal.class, false, false, property, property));
        }
    }

    /** A quantity, or an amount of money: a number and its unit. */
    private static boolean isAmount(Class<?> type) {
        return Arrays.stream(type.getRecordComponents()).map(RecordComponent::getName).toList().equals(List.of("value", "unit"));
    }

    private boolean isOfCautions(RecordComponent component) {
        return answers && element(component) == CautionAnswer.class;
    }

    private static boolean isList(RecordComponent component) {
        return component.getGenericType() instanceof ParameterizedType;
    }

    private static Class<?> element(RecordComponent component) {
        Type element = ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
        return (Class<?>) element;
    }

    private static boolean plain(Class<?> element) {
        return !isPart(element);
    }

    /** An object on the wire, which has columns of its own; a record that is none is written as one plain value. */
    private static boolean isPart(Class<?> type) {
        return type.isAnnotationPresent(SchemaDescription.class);
    }
}
