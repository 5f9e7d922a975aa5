// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.model.Model;
import dev.brinebook.text.Message;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The end of an answer: the version of its model, and its basis: what {@link Basis} says of the components that it has, then what was
 * composed for the case.
 */
final class AnswerBasis {

    private static final String COMPONENT = "basis";
    private static final String VERSION = "modelVersion";

    private static final ClassValue<Shape> SHAPES = new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> type) {
            return Shape.of(type);
        }
    };

    private AnswerBasis() {
    }

    /** {@code answer} with the version of {@code model}, and its whole basis where the parts have it; one without a basis as it is. */
    @SuppressWarnings("unchecked")
    static <A extends Record> A complete(A answer, Model model, AnswerParts parts) {
        Shape shape = SHAPES.get(answer.getClass());
        int place = shape.names().indexOf(COMPONENT);
        if (place < 0) {
            return answer;
        }
        int version = shape.names().indexOf(VERSION);
        if (!parts.hasBasis() && model.version().equals(shape.record().value(version, answer))) {
            return answer;
        }
        Object[] values = shape.values(answer);
        if (parts.hasBasis()) {
            Set<BasisAnswer> entries = new LinkedHashSet<>();
            collect(values, shape, "", entries);
            entries.addAll((List<BasisAnswer>) values[place]);
            values[place] = List.copyOf(entries);
        }
        values[version] = model.version();
        return (A) shape.record().make(values);
    }

    private static void collect(Object value, String pointer, Set<BasisAnswer> to) {
        if (value instanceof Record part) {
            Shape shape = SHAPES.get(part.getClass());
            if (shape.hasBasis()) {
                collect(shape.values(part), shape, pointer, to);
            }
        } else if (value instanceof Collection<?> elements) {
            elements.forEach(element -> collect(element, pointer + "/*", to));
        }
    }

    private static void collect(Object[] values, Shape shape, String pointer, Set<BasisAnswer> to) {
        for (int i = 0; i < values.length; i++) {
            if (values[i] != null) {
                String place = pointer + "/" + shape.names().get(i);
                for (BasisAnswer entry : shape.basis().get(i)) {
                    to.add(entry.at(place));
                }
                collect(values[i], place, to);
            }
        }
    }

    /**
     * A record type.
     *
     * @param record how it is read and made
     * @param basis entries of each component, not yet at a pointer
     * @param hasBasis whether it, or a part that it may hold, has an entry
     */
    private record Shape(RecordShape record, List<List<BasisAnswer>> basis, boolean hasBasis) {

        static Shape of(Class<?> type) {
            return new Shape(RecordShape.of(type), Arrays.stream(type.getRecordComponents()).map(Shape::entries).toList(),
                    hasBasis(type, new LinkedHashSet<>()));
        }

        List<String> names() {
            return record.names();
        }

        Object[] values(Object of) {
            return record.values(of);
        }

        private static List<BasisAnswer> entries(RecordComponent component) {
            return Arrays.stream(component.getAnnotationsByType(Basis.class))
                    .map(basis -> BasisAnswer.of("", Message.of(basis.formula()), basis.source())).toList();
        }

        private static boolean hasBasis(Type type, Set<Type> seen) {
            if (type instanceof ParameterizedType of) {
                return Arrays.stream(of.getActualTypeArguments()).anyMatch(each -> hasBasis(each, seen));
            }
            return type instanceof Class<?> record && record.isRecord() && seen.add(type) && Arrays.stream(record.getRecordComponents())
                    .anyMatch(component -> component.getAnnotationsByType(Basis.class).length > 0
                            || hasBasis(component.getGenericType(), seen));
        }
    }
}
