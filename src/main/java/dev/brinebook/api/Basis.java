// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Formula and source of one component of an answer, the same for every case. {@link AnswerBasis} reads them; an operation composes
 * only the entries that depend on the case, by {@link Explanation#because}.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
@Repeatable(Basis.All.class)
public @interface Basis {

    /** Id of the text of the formula, which has no slots. */
    String formula() default AS_GIVEN;

    /** Key of the register of sources. */
    String source() default GIVEN;

    /** What is taken over from the request, or from its defaults. */
    String AS_GIVEN = "formula.api.givenOrDefaultListed";
    /** The source of what is taken over. */
    String GIVEN = "REQUEST";

    /** Several entries of one component. */
    @Retention(RetentionPolicy.RUNTIME)
    @Target(ElementType.RECORD_COMPONENT)
    @interface All {

        Basis[] value();
    }
}
