// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.model.Model;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * One calculation that callers can ask for. The server routes and the contract documents the same list of these, so an
 * undocumented route cannot exist.
 *
 * @param id operationId of the contract, camelCase
 * @param path path of the route, such as {@code /v1/assessment}
 * @param summary one line
 * @param description when to choose it and what it answers, so that a language model can pick the right one
 * @param requestType record of the request body
 * @param answerType record of the answer
 * @param calculate the calculation; gets a request without violations, and the model to calculate with
 * @param query how a GET request is written, empty when there is no GET form
 * @param examples names of its committed examples, see {@link #exampleFile}
 * @param forms further forms of the answer, beside JSON
 * @param textForm another form of the request beside JSON, null when there is none
 * @param <Q> request
 * @param <A> answer
 */
public record Operation<Q extends Record, A extends Record>(String id, String path, String summary,
        String description, Class<Q> requestType, Class<A> answerType, BiFunction<Q, Model, A> calculate, List<QueryParameter> query,
        List<String> examples,
        List<AnswerForm<Q>> forms, BodyForm<?, A> textForm) {

    public static final String JSON = "application/json";
    /** How deep the JSON of a request may be nested; no request needs half of it. */
    public static final int MAX_DEPTH = 32;

    public Operation {
        query = List.copyOf(query);
        examples = List.copyOf(examples);
        forms = List.copyOf(forms);
    }

    /** An operation that takes and answers JSON only. */
    public Operation(String id, String path, String summary, String description, Class<Q> requestType,
            Class<A> answerType, BiFunction<Q, Model, A> calculate, List<QueryParameter> query, List<String> examples) {
        this(id, path, summary, description, requestType, answerType, calculate, query, examples, List.of(), null);
    }

    /** The same for one that no change of the model concerns. */
    public Operation(String id, String path, String summary, String description, Class<Q> requestType,
            Class<A> answerType, Function<Q, A> calculate, List<QueryParameter> query, List<String> examples) {
        this(id, path, summary, description, requestType, answerType, (request, model) -> calculate.apply(request), query, examples);
    }

    /** The answer by the current model. */
    public A answer(Q request) {
        return answer(request, Model.CURRENT, AnswerParts.ALL);
    }

    /** The answer to a request without violations, with the version of the model, and its whole basis where the parts have it. */
    public A answer(Q request, Model model, AnswerParts parts) {
        return AnswerBasis.complete(calculate.apply(request, model), model, parts);
    }

    /** The same operation, answering in other forms too. */
    public Operation<Q, A> answeringIn(List<AnswerForm<Q>> others) {
        return new Operation<>(id, path, summary, description, requestType, answerType, calculate, query, examples,
                others, textForm);
    }

    /** The same operation, taking its request in another form too. */
    public Operation<Q, A> taking(BodyForm<?, A> other) {
        return new Operation<>(id, path, summary, description, requestType, answerType, calculate, query, examples, forms,
                other);
    }

    /** Every media type it answers in; the first is sent to callers that have no preference. */
    public List<String> answerMediaTypes() {
        return Stream.concat(Stream.of(JSON), forms.stream().map(AnswerForm::mediaType)).toList();
    }

    /** What a caller may choose about the further forms of its answer. */
    public List<FormChoice<?>> choices() {
        return forms.stream().flatMap(form -> form.choices().stream()).distinct().toList();
    }

    /** Media types that a request may come in. */
    public List<String> requestTypes() {
        return textForm == null ? List.of(JSON) : List.of(JSON, textForm.mediaType());
    }

    /** Name of the committed file of an example: {@code part} is request, response, or explained (assumptions and basis alone). */
    public String exampleFile(String name, String part) {
        return id + "." + name + "." + part + ".json";
    }

    /** Name of the committed answer of a further form to its example. */
    public String exampleFile(AnswerForm<?> form) {
        return id + "." + form.example() + ".response." + form.extension();
    }

    /**
     * One parameter of a GET form.
     *
     * @param name as written in the query
     * @param pointer pointer to its value in the request body; empty when it is the whole body
     * @param number whether the value is a number, else it is text
     * @param unit the unit that the number is in, or null where another parameter gives it
     * @param description what it is
     * @param required whether it must be given
     * @param example an example as written in the query
     */
    public record QueryParameter(String name, String pointer, boolean number, String unit, String description,
            boolean required, String example) {

        /** A parameter that is a text. */
        public static QueryParameter text(String name, String pointer, String description, boolean required,
                String example) {
            return new QueryParameter(name, pointer, false, null, description, required, example);
        }

        /** The one parameter of a form that takes the whole request, as JSON. */
        public static QueryParameter whole(String name, String description, String example) {
            return new QueryParameter(name, "", false, null, description, true, example);
        }

        public boolean isWhole() {
            return pointer.isEmpty();
        }

        /** A parameter that is a number in {@code unit}, or in the unit that another parameter gives when null. */
        public static QueryParameter number(String name, String pointer, String unit, String description,
                boolean required, String example) {
            return new QueryParameter(name, pointer, true, unit, description, required, example);
        }
    }
}
