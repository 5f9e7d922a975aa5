// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Description and allowed values of one property of a request or an answer. The only place for these facts: {@link Checker} checks
 * requests against them and the contract prints them.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Property {

    /** Description, in a sentence or two, starting with a capital. */
    String value();

    /**
     * Whether a request must hold it, of the kinds that it belongs to. An answer's property is always there, of these kinds,
     * unless {@link #optional} says otherwise.
     */
    boolean required() default false;

    /** The only kinds that it belongs to, by their names on the wire; every kind when empty. See {@link Discriminator}. */
    String[] kinds() default {};

    /** The kinds that it does not belong to, by their names on the wire. */
    String[] exceptKinds() default {};

    /** Whether an answer may leave it out, and when. */
    String optional() default "";

    /** Lowest number, in {@link #unit} for a quantity; of every element for a list. */
    double min() default Double.NEGATIVE_INFINITY;

    /** Whether {@link #min} itself is refused. */
    boolean aboveMin() default false;

    /** Highest number, as {@link #min}. */
    double max() default Double.POSITIVE_INFINITY;

    /** The unit of {@link #min} and {@link #max} of a quantity; the unit of a plain number, in words. */
    String unit() default "";

    /**
     * The number taken when the request leaves it out: a constant that the calculation takes too. NaN where there is none, or where
     * it depends on other values; then {@link #fallback} says on what.
     */
    double byDefault() default Double.NaN;

    /** The unit of {@link #byDefault} of a quantity; {@link #unit} when empty. */
    String defaultUnit() default "";

    /** The choice taken when the request leaves it out, by its name on the wire. */
    String defaultCode() default "";

    /** The value taken when the request leaves it out, in words; behind {@link #byDefault} or {@link #defaultCode}, more about it. */
    String fallback() default "";

    /** An example of a plain value, as JSON. */
    String example() default "";

    /** Fewest elements of a list. */
    int minItems() default 0;

    /** Most elements of a list, or characters of a text. */
    int maxItems() default Integer.MAX_VALUE;

    /** The enum of whose constants a list has at most one element each; none when {@code void}. See {@link ListLength}. */
    Class<?> eachOf() default void.class;
}
