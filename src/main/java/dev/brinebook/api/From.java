// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Other results of an answer that the formula of a component takes. {@link Explainer} lists them with their values; one that an answer
 * does not have is left out.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface From {

    /** JSON pointers into the answer, or into the same record without the first slash; {@code *} is every element of a list. */
    String[] value();

    /** A pointer into the answer, and the codes there with which the component takes others than these; none if it always takes them. */
    String[] unless() default {};
}
