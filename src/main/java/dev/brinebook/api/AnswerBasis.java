// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.text.Message;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The basis of an answer: what {@link Basis} says of the components that it has, then what was composed for the case. */
final class AnswerBasis {

    private static final String COMPONENT = "basis";

    private static final ClassValue<Shape> SHAPES = new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> type) {
            return Shape.of(type);
        }
    };

    private AnswerBasis() {
    }

    /** {@code answer} with its whole basis; one without a component of that name as it is. */
    @SuppressWarnings("unchecked")
    static <A extends Record> A complete(A answer) {
        Shape shape = SHAPES.get(answer.getClass());
        int place = shape.names().indexOf(COMPONENT);
        if (place < 0) {
            return answer;
        }
        Object[] values = shape.values(answer);
        Set<BasisAnswer> entries = new LinkedHashSet<>();
        collect(values, shape, "", entries);
        entries.addAll((List<BasisAnswer>) values[place]);
        values[place] = List.copyOf(entries);
        return (A) shape.make(values);
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
     * @param names of its components
     * @param basis entries of each component, not yet at a pointer
     * @param readers of each component
     * @param maker its canonical constructor, of an array of their values
     * @param hasBasis whether it, or a part that it may hold, has an entry
     */
    private record Shape(List<String> names, List<List<BasisAnswer>> basis, List<MethodHandle> readers, MethodHandle maker,
            boolean hasBasis) {

        static Shape of(Class<?> type) {
            RecordComponent[] components = type.getRecordComponents();
            Class<?>[] types = Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            List<MethodHandle> readers = new ArrayList<>();
            try {
                MethodHandles.Lookup lookup = MethodHandles.privateLookupIn(type, MethodHandles.lookup());
                for (RecordComponent component : components) {
                    readers.add(lookup.unreflect(component.getAccessor()));
                }
                return new Shape(Arrays.stream(components).map(RecordComponent::getName).toList(), Arrays.stream(components)
                        .map(Shape::entries).toList(), readers,
                        lookup.unreflectConstructor(type.getDeclaredConstructor(types)).asSpreader(Object[].class, types.length),
                        hasBasis(type, new LinkedHashSet<>()));
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(type + " cannot be read", e);
            }
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

        Object[] values(Object of) {
            Object[] values = new Object[readers.size()];
            for (int i = 0; i < values.length; i++) {
                values[i] = call(readers.get(i), of);
            }
            return values;
        }

        Object make(Object[] values) {
            return call(maker, values);
        }

        private static Object call(MethodHandle handle, Object argument) {
            try {
                return argument instanceof Object[] values ? handle.invoke(values) : handle.invoke(argument);
            } catch (RuntimeException | Error e) {
                throw e;
            } catch (Throwable e) { // what a method handle declares
                throw new IllegalStateException(e);
            }
        }
    }
}
