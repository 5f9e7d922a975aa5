// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.api.Operation;

/** Calculates for a tool just as it does for every other caller. */
@FunctionalInterface
public interface Calculation {

    /** What {@code operation} answers to {@code arguments}; may throw, which ends the whole request. */
    ToolAnswer answer(Operation<?, ?> operation, byte[] arguments);
}
