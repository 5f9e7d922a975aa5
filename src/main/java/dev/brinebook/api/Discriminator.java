// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks the one component, an enum, whose value is the kind of its record. The other components say in
 * {@link Property#kinds} which kinds they belong to; the contract shows the record as one schema for each kind.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Discriminator {

    /**
     * First part of the name of the one schema that the kinds share which no component names, as they differ in nothing but
     * their name; each has a schema of its own when empty.
     */
    String others() default "";
}
