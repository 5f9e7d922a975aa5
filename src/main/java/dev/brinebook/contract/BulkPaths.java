package dev.brinebook.contract;

import dev.brinebook.api.Columns;
import dev.brinebook.api.ColumnsAnswer;
import dev.brinebook.api.FormulaGuard;
import dev.brinebook.api.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.parameters.RequestBody;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.responses.ApiResponses;
import java.util.List;
import java.util.stream.Collectors;

/** Every operation again, as a stream of lines or rows. */
final class BulkPaths {

    static final String ID = "calculateInBulk";
    static final String TEMPLATE_ID = "readBulkTemplate";
    /** What the examples of a stream ask for, and its name. */
    static final String EXAMPLE_CALCULATOR = "compensateHardness";
    static final String EXAMPLE = "water-tests";
    /** Whose template is the example. */
    static final String TEMPLATE_EXAMPLE = "convertHardness";
    static final String NDJSON = "application/x-ndjson";
    static final String CSV = "text/csv";

    private static final String LINES_IN = "A request of the operation on each line (NDJSON). Blank lines are skipped; a line has"
            + " at most 64 KiB; the stream has no end of its own.";
    private static final String LINES_OUT = "For each line that is not blank, in the same order, one with its number and status"
            + " and either the answer or the problem, both as the operation gives them: {\"line\": 1, \"status\": 200,"
            + " \"answer\": {...}} or {\"line\": 2, \"status\": 422, \"problem\": {...}}. A faulty line never ends the stream."
            + " Where the lines break off, or nothing comes for two minutes, a last line says so (400, 408).";
    private static final String ROWS_IN = "A header row, then a request on each row, by RFC 4180 in UTF-8. A column is a property"
            + " by the names that lead to it with dots between, so that a quantity is two, such as water.hardness.value and"
            + " water.hardness.unit; a list of plain values is one cell with semicolons between; a list of objects or of"
            + " quantities has no column. " + Contract.TEMPLATE_PATH + " lists the columns. Take those you need, in any order;"
            + " an unknown one is refused before any row. An empty cell is a property left out; a number is written as in"
            + " JSON. A row is one line, of at most 64 KiB. Taken by ";
    private static final String ROWS_OUT = "A header row, then for each row or line a row: line, its number in what was sent,"
            + " with the header as line 1; status; every plain value of the answer outside of lists, named as the columns of a"
            + " request, cautions by their codes with semicolons between; then problem.type, problem.detail and"
            + " problem.errors, each fault with its column. What only lists hold stands in the other form. A text that "
            + FormulaGuard.DESCRIPTION;

    private final List<Operation<?, ?>> operations;
    private final Examples examples;

    BulkPaths(List<Operation<?, ?>> operations, Examples examples) {
        this.operations = operations;
        this.examples = examples;
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
                .addMediaType(CSV, text(ROWS_IN + flat().stream().collect(Collectors.joining(", ")) + ".", "request", "csv"));
        Content out = new Content().addMediaType(NDJSON, text(LINES_OUT, "response", "ndjson"))
                .addMediaType(CSV, text(ROWS_OUT, "response", "csv"));
        var post = new io.swagger.v3.oas.models.Operation().operationId(ID)
                .summary("Answer many requests of one operation, line by line")
                .description("Choose this for a list of cases, be it a hundred thousand: it takes one request of the named"
                        + " operation on each line or row and answers each on one of its own, in the same order, while the list"
                        + " is still being sent. The answer has the form of the request unless Accept asks for the other."
                        + " Read the answers while you send: who does not is waited for, two minutes at most; then the"
                        + " connection is closed without the end of the answer. For one case choose the operation itself, such as"
                        + " convertHardness, which answers a fault by its HTTP status.")
                .tags(List.of(DocumentBuilder.CALCULATION)).security(DocumentBuilder.keyWhereAsked())
                .requestBody(new RequestBody().required(true).description("The requests.").content(in))
                .responses(DocumentBuilder.addErrors(new ApiResponses().addApiResponse("200",
                        new ApiResponse().description("The answers.").content(out)), ErrorResponses.OF_BULK));
        return new PathItem().post(post.addParametersItem(calculator(operations.stream().map(Operation::id).toList(),
                EXAMPLE_CALCULATOR)));
    }

    PathItem template() {
        MediaType table = DocumentBuilder.text("Every column of a table of requests of the operation, then a row for each of its"
                + " examples that fits one, to be sent back as they are or with rows of your own in their place.")
                .addExamples(TEMPLATE_EXAMPLE, examples.readText(templateFile("csv"), TEMPLATE_EXAMPLE));
        MediaType list = new MediaType().schema(DocumentBuilder.reference(ColumnsAnswer.class))
                .addExamples(TEMPLATE_EXAMPLE, examples.readJson(templateFile("json"), TEMPLATE_EXAMPLE));
        var get = new io.swagger.v3.oas.models.Operation().operationId(TEMPLATE_ID)
                .summary("A table to fill in for many requests")
                .description("Choose this before sending a table to " + Contract.BULK_PATH + ": as text/csv it is a table with"
                        + " every column and the examples, as application/json it says of every column what it holds."
                        + " For one case choose the operation itself, such as convertHardness, which takes JSON.")
                .tags(List.of(DocumentBuilder.CALCULATION)).security(DocumentBuilder.keyWhereAsked())
                .responses(DocumentBuilder.addErrors(new ApiResponses().addApiResponse("200", new ApiResponse()
                        .description("The template.").content(new Content()
                                // Clients made from the contract take the first of two for their type.
                                .addMediaType(Operation.JSON, list).addMediaType(CSV, table))), ErrorResponses.OF_TEMPLATE));
        return new PathItem().get(get.addParametersItem(calculator(flat(), TEMPLATE_EXAMPLE)));
    }

    /** Operations whose requests rows can hold. */
    private List<String> flat() {
        return operations.stream().filter(operation -> Columns.missing(operation.requestType()).isEmpty()).map(Operation::id)
                .toList();
    }

    private static Parameter calculator(List<String> ids, String example) {
        Schema<Object> schema = DocumentBuilder.text();
        schema.setEnum(ids.stream().map(Object.class::cast).toList());
        return new Parameter().in("path").name("calculator").required(true).description("The operation, by its id.")
                .schema(schema).example(example);
    }

    private MediaType text(String description, String part, String extension) {
        return DocumentBuilder.text(description).addExamples(EXAMPLE, examples.readText(exampleFile(part, extension), EXAMPLE));
    }
}
