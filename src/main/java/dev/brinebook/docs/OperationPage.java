// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.Operation;
import dev.brinebook.api.Operation.QueryParameter;
import dev.brinebook.contract.Contract;
import dev.brinebook.contract.ErrorResponses;
import dev.brinebook.contract.Examples;
import dev.brinebook.docs.AnsweredExamples.Answered;
import dev.brinebook.docs.PartIndex.Link;
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
 * @param sheet how a spreadsheet calls it
 * @param cautions what it warns of in the examples
 * @param request table of the request
 * @param requestParts the parts that the request may hold, each on its own page
 * @param answer table of the answer
 * @param answerParts the parts that the answer may hold
 * @param errors errors it can give
 */
record OperationPage(String id, String summary, String description, String path, String bulkPath, List<ShortForm> shortForm,
        List<ShownExample> examples, List<Form> forms, Spreadsheet sheet, List<Warnings.Warned> cautions, Part request,
        List<Link> requestParts, Part answer, List<Link> answerParts, List<ErrorResponses> errors) {

    /** A GET form: a call and its parameters. */
    record ShortForm(Snippets call, List<QueryParameter> query) {
    }

    /** An example: the call, and the sentence that sums its answer up. */
    record ShownExample(String name, Snippets call, String summary) {
    }

    /**
     * Another form.
     *
     * @param title whether it is of the request or of the answer
     * @param mediaType its media type
     * @param anchor where the committed answer is on the page of answers, empty where it is no text
     * @param description what it holds
     * @param query its parameters
     * @param call a call
     */
    record Form(String title, String mediaType, String anchor, String description, List<QueryParameter> query, Snippets call) {
    }

    static OperationPage of(Operation<?, ?> operation, PartIndex parts) {
        List<Answered> answered = AnsweredExamples.of(operation);
        return new OperationPage(operation.id(), operation.summary(), operation.description(), operation.path(),
                Contract.BULK_PATH.replaceFirst("\\{.*}", operation.id()), operation.query().isEmpty() ? List.of()
                : List.of(new ShortForm(Snippets.of(Call.get(operation)), operation.query())),
                answered.stream().map(example -> new ShownExample(example.name(), Snippets.of(Call.post(operation,
                        Examples.text(operation, example.name(), "request"))), example.summary())).toList(),
                forms(operation), Spreadsheet.of(operation), Warnings.cautions(answered),
                parts.request(operation), parts.below(operation.requestType()),
                parts.answer(operation), parts.below(operation.answerType()), ErrorResponses.OF_POST);
    }

    private static List<Form> forms(Operation<?, ?> operation) {
        List<Form> forms = new ArrayList<>();
        if (operation.textForm() != null) {
            forms.add(new Form("The request as", operation.textForm().mediaType(), "", operation.textForm().description(),
                    operation.textForm().query(), Snippets.of(Call.postText(operation))));
        }
        operation.forms().forEach(form -> forms.add(new Form("The answer as", form.mediaType(),
                form.isText() ? AnswersPage.anchor(form) : "", form.description(), List.of(),
                Snippets.of(Call.post(operation, Examples.text(operation, form.example(), "request"), form.mediaType())))));
        return forms;
    }
}
