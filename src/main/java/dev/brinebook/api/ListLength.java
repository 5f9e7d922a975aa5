// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.caution.Caution;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;

/** How many elements a list of a request or answer has at most. */
public final class ListLength {

    private ListLength() {
    }

    /**
     * The most elements of a list: what its {@link Property} says; of a closed list, and of cautions, each once.
     *
     * @throws IllegalStateException when nothing says it
     */
    public static int most(RecordComponent component) {
        Property property = component.getAnnotation(Property.class);
        if (property.maxItems() < Integer.MAX_VALUE) {
            return property.maxItems();
        }
        Class<?> element = property.eachOf() != void.class ? property.eachOf()
                : ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0] instanceof Class<?> each ? each
                : Object.class;
        if (element.isEnum()) {
            return element.getEnumConstants().length;
        }
        if (element == CautionAnswer.class) {
            return Caution.values().length;
        }
        if (element == Resolved.class || element == BasisAnswer.class) {
            return Explanation.MOST_ENTRIES;
        }
        throw new IllegalStateException(component.getDeclaringRecord().getName() + "." + component.getName() + " has no bound");
    }
}
