// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.sheet;

import dev.brinebook.text.Message;
import java.time.LocalDate;

/**
 * Foot of a sheet of a plan.
 *
 * @param name none: a plan has no name of a customer
 * @param seenOn the first day of the plan
 * @param modelVersion the version of the formulas and data
 */
public record PlanHead(String name, Message seenOn, String modelVersion) {

    public static PlanHead of(LocalDate first, String modelVersion) {
        return new PlanHead(null, Message.of("pattern.value", first), modelVersion);
    }
}
