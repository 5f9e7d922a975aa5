// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.api.Operation;
import dev.brinebook.text.Language;

/** Calculates for a tool just as it does for every other caller. What its methods throw ends the whole request. */
public interface Calculation {

    /** What {@code operation} answers to a request as JSON. */
    Outcome calculate(Operation<?, ?> operation, byte[] request);

    /** An answer, or a part of one, as JSON. */
    byte[] write(Object part);

    /** The language of what answers say. */
    Language language();
}
