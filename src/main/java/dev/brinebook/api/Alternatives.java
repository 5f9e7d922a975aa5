// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Properties of a request record that stand for each other: this one or that one. The only place for the rule: {@link Checker} checks
 * requests against it, and the contract prints it as {@code x-alternatives}.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@Repeatable(Alternatives.List.class)
public @interface Alternatives {

    /** The alternatives, at least two, the usual one first; properties that make one together are joined by {@code " + "}. */
    String[] value();

    /** Whether one must be given. */
    boolean required() default false;

    /** Whether more than one may be given. Where not, one that is begun must also be complete. */
    boolean several() default false;

    /** Several rules of one record. */
    @Retention(RetentionPolicy.RUNTIME)
    @Target(ElementType.TYPE)
    @interface List {

        Alternatives[] value();
    }
}
