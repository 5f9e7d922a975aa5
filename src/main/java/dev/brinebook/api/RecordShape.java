// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How a record type is read and made, worked out once.
 *
 * @param names of its components
 * @param readers of each component
 * @param maker its canonical constructor, of an array of their values
 */
record RecordShape(List<String> names, List<MethodHandle> readers, MethodHandle maker) {

    private static final ClassValue<RecordShape> SHAPES = new ClassValue<>() {
        @Override
        protected RecordShape computeValue(Class<?> type) {
            return read(type);
        }
    };

    static RecordShape of(Class<?> type) {
        return SHAPES.get(type);
    }

    private static RecordShape read(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        Class<?>[] types = Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        List<MethodHandle> readers = new ArrayList<>();
        try {
            MethodHandles.Lookup lookup = MethodHandles.privateLookupIn(type, MethodHandles.lookup());
            for (RecordComponent component : components) {
                readers.add(lookup.unreflect(component.getAccessor()));
            }
            return new RecordShape(Arrays.stream(components).map(RecordComponent::getName).toList(), readers,
                    lookup.unreflectConstructor(type.getDeclaredConstructor(types)).asSpreader(Object[].class, types.length));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type + " cannot be read", e);
        }
    }

    Object[] values(Object of) {
        Object[] values = new Object[readers.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = call(readers.get(i), of);
        }
        return values;
    }

    /** The value of the component at a place. */
    Object value(int place, Object of) {
        return call(readers.get(place), of);
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
