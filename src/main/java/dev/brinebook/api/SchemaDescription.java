// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What a record on the wire is, in a sentence for the contract. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface SchemaDescription {

    String value();
}
