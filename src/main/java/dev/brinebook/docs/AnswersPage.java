// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.Operation;
import dev.brinebook.contract.Examples;
import java.util.List;
import java.util.stream.Stream;

/**
 * The whole answers to the examples of an operation.
 *
 * @param id operationId
 * @param answers the answers in JSON, then those in other forms that are texts
 */
record AnswersPage(String id, List<Answer> answers) {

    /** An answer: where it is on the page, what it is, and its text. */
    record Answer(String anchor, String title, String text) {

        /** The text as the content of an element. */
        String html() {
            return Templates.escaped(text);
        }
    }

    static AnswersPage of(Operation<?, ?> operation) {
        return new AnswersPage(operation.id(), Stream.concat(
                operation.examples().stream().map(name -> new Answer("example-" + name, "Invented example: " + name,
                        Examples.text(operation, name, "response"))),
                operation.forms().stream().filter(AnswerForm::isText).map(form -> new Answer(anchor(form),
                        form.mediaType() + ", of " + form.example(), Examples.text(operation, form)))).toList());
    }

    /** Where the page has the answer of a form. */
    static String anchor(AnswerForm<?> form) {
        return "form-" + form.extension();
    }
}
