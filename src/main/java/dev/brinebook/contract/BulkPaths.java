// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import dev.brinebook.api.CsvColumns;
import dev.brinebook.api.CsvColumnsAnswer;
import dev.brinebook.api.FormulaGuard;
import dev.brinebook.api.Operation;
import dev.brinebook.api.WireNames;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.parameters.RequestBody;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.responses.ApiResponses;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Every operation again, as a stream of lines or rows. */
final class BulkPaths {

    static final String CALCULATOR = "calculator";
    static final String ID = "calculateInBulk";
    static final String TEMPLATE_ID = "readBulkTemplate";
    /** Operation and name of the examples of a stream. */
    static final String EXAMPLE_CALCULATOR = "compensateHardness";
    static final String EXAMPLE = "water-tests";
    /** Whose template is the example. */
    static final String TEMPLATE_EXAMPLE = "convertHardness";
    static final String NDJSON = "application/x-ndjson";
    static final String CSV = "text/csv";

    private static final String LINES_IN = "One request of the operation per line (NDJSON), or an object with the request and an id of "
            + "yours, a text or a number that its answer repeats: {\"id\": \"A-17\", \"request\": {...}}. Blank lines are skipped. A line "
            + "has at most 64 KiB. The number of lines is not limited.";
    private static final String LINES_OUT = "One line for each line that is not blank, in the same order. It has the line number, the "
            + "status, the id if one was sent, and either the answer or the problem, in the form of the operation: {\"line\": 1, "
            + "\"status\": 200, \"answer\": {...}} or {\"line\": 2, \"status\": 422, \"problem\": {...}}. Of a table, columns has the "
            + "cells that are repeated. A line with errors never ends the stream. If the input breaks off, or nothing arrives for "
            + "two minutes, a "
            + "last line reports it (400, 408). A dry run ends with {\"summary\": {\"lines\": 3, \"ready\": 2, \"faulty\": 1, "
            + "\"kinds\": [...], \"complete\": true}}.";
    private static final String ROWS_IN = "CSV (RFC 4180) in UTF-8: a header row, then one request per row. A column is named "
            + "by the path of its property, joined by dots, or given to a property by the parameter map. So a quantity has two "
            + "columns, such as water.hardness.value and water.hardness.unit. A list of plain values is one cell, separated by "
            + "semicolons. A list of "
            + "objects or of quantities has no column. " + Contract.TEMPLATE_PATH + " lists the columns. Use those you need, in any order. "
            + "An unknown column is refused before any row, unless it is passed. A blank cell means an omitted property. Blanks around "
            + "values do not matter, nor does the case of units, true and false. Numbers are written as in JSON unless decimal or "
            + "thousands say otherwise. The separator is in the response header Table-Separator. A cell in quotes may have line "
            + "breaks. A row has at most 64 KiB; if a quote is not closed within them, its first line alone is a row with an error. A "
            + "table has at most 1,000 columns. Accepted by ";
    private static final String ROWS_OUT = "A header row, then one row for each row or line: line, the number of the row as a "
            + "spreadsheet counts, with the header and blank lines; status; the columns that are passed, or the id of "
            + "a line, a name that the answer has too as passed.NAME; "
            + "every plain value of the answer outside lists, named like the columns of a request, a hardness in every "
            + "unit, and the codes of the cautions, "
            + "separated by semicolons; with fields only those, in that order; then problem.type, problem.detail, problem.message, each "
            + "error with its column, and problem.errors, the errors as in JSON. Separator and decimal sign are those of the request. "
            + "Values inside other lists are only in the NDJSON form. A dry run ends with a row of status summary. A text that "
            + FormulaGuard.DESCRIPTION;

    private final List<Operation<?, ?>> operations;

    BulkPaths(List<Operation<?, ?>> operations) {
        this.operations = operations;
    }

    /** Name of the committed file of an example stream: {@code part} is request or response. */
    static String exampleFile(String part, String extension) {
        return ID + "." + EXAMPLE + "." + part + "." + extension;
    }

    static String templateFile(String extension) {
        return TEMPLATE_ID + "." + TEMPLATE_EXAMPLE + ".response." + extension;
    }

    PathItem stream() {
        Content in = new Content().addMediaType(NDJSON, text(LINES_IN, "request", "ndjson"))
                .addMediaType(CSV, text(ROWS_IN + flat().stream().collect(Collectors.joining(", ")) + ".", "request",
                        "csv"));
        Content out = new Content().addMediaType(NDJSON, text(LINES_OUT, "response", "ndjson"))
                .addMediaType(CSV, text(ROWS_OUT, "response", "csv"));
        var post = new io.swagger.v3.oas.models.Operation().operationId(ID)
                .summary("Answer many requests of one operation, line by line")
                .description("Choose this for a list of cases, even a hundred thousand. It takes one request of the named operation per "
                        + "line or row and answers each on its own line, in the same order, while the list is still being sent. The "
                        + "answer has the format of the request unless Accept requests the other. Read the answers while you send, or "
                        + "send answer=afterUpload. If you do not read for two minutes, the connection is closed before the end of "
                        + "the answer; from continues it. For one case choose "
                        + "the operation itself, such as convertHardness, which reports errors by HTTP status.")
                .tags(List.of(DocumentBuilder.CALCULATION)).security(DocumentBuilder.keyWhereAsked())
                .requestBody(new RequestBody().required(true).description("The requests.").content(in))
                .responses(DocumentBuilder.addErrors(new ApiResponses().addApiResponse("200",
                        DocumentBuilder.calculated(new ApiResponse().description("The answers.").content(out),
                                List.of(ResponseHeaders.SEPARATOR, ResponseHeaders.PASSED))), ErrorResponses.OF_BULK));
        post.addParametersItem(QueryParameters.reference(CALCULATOR));
        Arrays.stream(BulkParameter.values()).filter(parameter -> !parameter.ofOperation())
                .forEach(parameter -> post.addParametersItem(query(parameter)));
        QueryParameters.partsByReference().forEach(post::addParametersItem);
        post.addParametersItem(QueryParameters.modelByReference());
        return new PathItem().post(post);
    }

    private static Parameter query(BulkParameter parameter) {
        Schema<Object> one = DocumentBuilder.text();
        if (parameter.isWholeNumber()) {
            one.setTypes(Set.of("integer"));
            one.setMinimum(BigDecimal.ONE);
            one.setMaximum(BigDecimal.valueOf(BulkParameter.LAST_LINE));
        } else if (!parameter.choices().isEmpty()) {
            one.setEnum(parameter.choices().stream().map(Object.class::cast).toList());
        }
        Parameter query = new Parameter().in("query").name(WireNames.of(parameter)).required(false)
                .description(parameter.description());
        if (!parameter.repeated()) {
            return query.schema(one).example(parameter.isWholeNumber() ? new BigDecimal(parameter.example()) : parameter.example());
        }
        Schema<Object> list = new JsonSchema();
        list.setTypes(Set.of("array"));
        list.items(one);
        return query.schema(list).style(Parameter.StyleEnum.FORM).explode(true).example(List.of(parameter.example()));
    }

    PathItem template() {
        MediaType table = DocumentBuilder.text("All columns of a table of requests of the operation, then a row for each example that "
                + "fits in a table. Send them back unchanged, or replace them with your own rows.")
                .addExamples(TEMPLATE_EXAMPLE, Examples.of(templateFile("csv")));
        MediaType list = new MediaType().schema(DocumentBuilder.reference(CsvColumnsAnswer.class))
                .addExamples(TEMPLATE_EXAMPLE, Examples.of(templateFile("json")));
        var get = new io.swagger.v3.oas.models.Operation().operationId(TEMPLATE_ID)
                .summary("Get a table template for many requests")
                .description("Choose this before sending a table to " + Contract.BULK_PATH + ": text/csv is a table with all columns "
                        + "and the examples, application/json describes each column. For one case choose the operation itself, such as "
                        + "convertHardness, which takes JSON.")
                .tags(List.of(DocumentBuilder.CALCULATION)).security(DocumentBuilder.keyWhereAsked())
                .responses(DocumentBuilder.addErrors(new ApiResponses().addApiResponse("200", DocumentBuilder.calculated(
                        new ApiResponse().description("The template.").content(new Content()
                                // Clients made from the contract take the first of two for their type.
                                .addMediaType(Operation.JSON, list).addMediaType(CSV, table)), List.of())), ErrorResponses.OF_TEMPLATE));
        return new PathItem().get(get.addParametersItem(calculator(flat(), TEMPLATE_EXAMPLE)));
    }

    /** Operations whose requests rows can hold. */
    private List<String> flat() {
        return operations.stream().filter(operation -> CsvColumns.missing(operation.requestType()).isEmpty()).map(Operation::id)
                .toList();
    }

    /** Every operation, as a component. */
    static Parameter calculator(List<Operation<?, ?>> operations) {
        return calculator(operations.stream().map(Operation::id).toList(), EXAMPLE_CALCULATOR);
    }

    private static Parameter calculator(List<String> ids, String example) {
        Schema<Object> schema = DocumentBuilder.text();
        schema.setEnum(ids.stream().map(Object.class::cast).toList());
        return new Parameter().in("path").name(CALCULATOR).required(true).description("Operation ID.")
                .schema(schema).example(example);
    }

    private static MediaType text(String description, String part, String extension) {
        return DocumentBuilder.text(description).addExamples(EXAMPLE, Examples.of(exampleFile(part, extension)));
    }

    /** Names of the files of examples of streams and templates, with their media types. */
    static Map<String, String> exampleFiles() {
        return Map.of(exampleFile("request", "ndjson"), NDJSON, exampleFile("response", "ndjson"), NDJSON,
                exampleFile("request", "csv"), CSV, exampleFile("response", "csv"), CSV,
                templateFile("csv"), CSV, templateFile("json"), Operation.JSON);
    }
}
