// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.text;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A closed list that many records have: the contract lists it once, under the name of the enum, with this description. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface ListedOnce {

    /** What the constants are, in a sentence. */
    String value();
}
