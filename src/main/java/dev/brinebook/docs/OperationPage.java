// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.Operation;
import dev.brinebook.api.Operation.QueryParameter;
import dev.brinebook.contract.Contract;
import dev.brinebook.contract.ErrorResponses;
import dev.brinebook.contract.Examples;
import dev.brinebook.docs.AnsweredExamples.Answered;
import dev.brinebook.docs.PartTables.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * The content of the page of an operation. All of it is read from the operation itself, its records and its committed
 * examples; nothing is written twice.
 *
 * @param id operationId
 * @param summary one line
 * @param description when to choose it
 * @param path its path
 * @param bulkPath where it answers lists
 * @param shortForm its GET form, or none
 * @param examples its examples, the first to be shown first
 * @param forms its other forms, of answers and of requests
 * @param formulas its calculation
 * @param limits ranges of all that a request may hold
 * @param assumed the defaults used in the examples
 * @param cautions what it warns of in the examples
 * @param request tables of the request
 * @param answer tables of the answer
 * @param errors errors it can give
 */
record OperationPage(String id, String summary, String description, String path, String bulkPath, List<ShortForm> shortForm,
        List<ShownExample> examples, List<Form> forms, List<Formulas.Line> formulas, List<Limits.Limit> limits,
        List<Warnings.Assumed> assumed, List<Warnings.Warned> cautions, List<Part> request, List<Part> answer,
        List<ErrorResponses> errors) {

    /** A GET form: a call and its parameters. */
    record ShortForm(String call, List<QueryParameter> query) {
    }

    /** An example: the call, the sentence that sums its answer up, and the whole answer. */
    record ShownExample(String name, String call, String summary, String answer) {
    }

    /** Another form: its media type, what it holds, its parameters, a call, and the committed answer, if any. */
    record Form(String title, String mediaType, String description, List<QueryParameter> query, String call, String answer) {
    }

    static OperationPage of(Operation<?, ?> operation) {
        List<Answered> answered = AnsweredExamples.of(operation);
        return new OperationPage(operation.id(), operation.summary(), operation.description(), operation.path(),
                Contract.BULK_PATH.replaceFirst("\\{.*}", operation.id()), operation.query().isEmpty() ? List.of()
                : List.of(new ShortForm(Curl.get(operation), operation.query())),
                answered.stream().map(example -> shown(operation, example)).toList(), forms(operation),
                Formulas.of(answered), Limits.of(operation.requestType()), Warnings.assumed(answered),
                Warnings.cautions(answered), PartTables.ofRequest(operation.requestType()),
                PartTables.ofAnswer(operation.answerType()), ErrorResponses.OF_POST);
    }

    private static ShownExample shown(Operation<?, ?> operation, Answered example) {
        return new ShownExample(example.name(), Curl.post(operation, Examples.text(operation, example.name(), "request")),
                example.summary(), Examples.text(operation, example.name(), "response"));
    }

    private static List<Form> forms(Operation<?, ?> operation) {
        List<Form> forms = new ArrayList<>();
        if (operation.textForm() != null) {
            forms.add(new Form("The request as", operation.textForm().mediaType(), operation.textForm().description(),
                    operation.textForm().query(), Curl.postText(operation), ""));
        }
        operation.forms().forEach(form -> forms.add(new Form("The answer as", form.mediaType(), form.description(), List.of(),
                Curl.post(operation, Examples.text(operation, form.example(), "request"), form.mediaType()),
                form.isText() ? Examples.text(operation, form) : "")));
        return forms;
    }
}
