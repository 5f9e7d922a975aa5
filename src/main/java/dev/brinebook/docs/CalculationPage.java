// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.Operation;
import dev.brinebook.docs.AnsweredExamples.Answered;
import java.util.List;

/**
 * How an operation calculates.
 *
 * @param id operationId
 * @param formulas its formulas with their sources
 * @param limits ranges of all that a request may hold
 * @param assumed the defaults used in the examples
 */
record CalculationPage(String id, List<Formulas.Line> formulas, List<Limits.Limit> limits, List<Warnings.Assumed> assumed) {

    static CalculationPage of(Operation<?, ?> operation) {
        List<Answered> answered = AnsweredExamples.of(operation);
        return new CalculationPage(operation.id(), Formulas.of(answered), Limits.of(operation.requestType()),
                Warnings.assumed(answered));
    }
}
