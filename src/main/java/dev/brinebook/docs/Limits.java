// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.Property;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;

/** The ranges within which a calculation answers, of every number that its request may hold. */
final class Limits {

    /** A number of the request, by the path to it, and its range in words. */
    record Limit(String path, String range) {
    }

    private Limits() {
    }

    static List<Limit> of(Class<? extends Record> request) {
        List<Limit> limits = new ArrayList<>();
        gather(request, "", limits);
        return limits;
    }

    private static void gather(Class<?> type, String path, List<Limit> limits) {
        for (RecordComponent component : type.getRecordComponents()) {
            Property property = component.getAnnotation(Property.class);
            boolean list = component.getType() == List.class;
            String place = path + component.getName() + (list ? "[]" : "");
            if (property.min() != Double.NEGATIVE_INFINITY || property.max() != Double.POSITIVE_INFINITY) {
                limits.add(new Limit(place, Ranges.inWords(property, list)));
            }
            Class<?> held = list ? element(component) : component.getType();
            if (held.isRecord()) {
                gather(held, place + ".", limits);
            }
        }
    }

    private static Class<?> element(RecordComponent list) {
        return (Class<?>) ((ParameterizedType) list.getGenericType()).getActualTypeArguments()[0];
    }
}
