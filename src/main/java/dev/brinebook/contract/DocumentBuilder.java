package dev.brinebook.contract;

import dev.brinebook.api.BodyForm;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.Paths;
import io.swagger.v3.oas.models.SpecVersion;
import io.swagger.v3.oas.models.examples.Example;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.info.License;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.parameters.RequestBody;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.responses.ApiResponses;
import io.swagger.v3.oas.models.servers.Server;
import io.swagger.v3.oas.models.tags.Tag;
import java.util.List;
import java.util.Set;

/** Puts the OpenAPI 3.1 document together. */
final class DocumentBuilder {

    private static final String CALCULATION = "calculation";
    private static final String SERVICE = "service";

    private final List<Operation<?, ?>> operations;
    private final List<PageRoute> pages;
    private final Class<?> problem;
    private final Examples examples = new Examples();

    DocumentBuilder(List<Operation<?, ?>> operations, List<PageRoute> pages, Class<?> problem) {
        this.operations = operations;
        this.pages = pages;
        this.problem = problem;
    }

    OpenAPI build() {
        Schemas schemas = new Schemas();
        schemas.addAnswer(problem);
        Paths paths = new Paths();
        for (Operation<?, ?> operation : operations) {
            schemas.addRequest(operation.requestType());
            schemas.addAnswer(operation.answerType());
            paths.addPathItem(operation.path(), item(operation));
        }
        paths.addPathItem(Contract.BULK_PATH, bulk());
        for (PageRoute page : pages) {
            if (page.answerType() != null) {
                schemas.addAnswer(page.answerType());
            }
            paths.addPathItem(page.path(), item(page));
        }
        Components components = new Components().schemas(schemas.build());
        ErrorResponses.ALL.forEach(error -> components.addResponses(error.name(), error.response(problem)));
        OpenAPI document = new OpenAPI(SpecVersion.V31).openapi("3.1.0").info(info()).paths(paths).components(components);
        document.setServers(List.of(new Server().url("/").description("This service.")));
        document.setTags(List.of(
                new Tag().name(CALCULATION).description("The calculators. Each is safe to retry: it changes nothing."),
                new Tag().name(SERVICE).description("The service itself: health, version, contract and pages.")));
        document.setSecurity(List.of());
        return document;
    }

    private static Info info() {
        return new Info().title("Brinebook").version(ModelVersion.CURRENT)
                .summary("The authoritative calculator for household water softeners.")
                .description("From a water test, a household and the softener that stands there: how hard the water really"
                        + " is, whether the softener fits, what to set, what it uses in salt, water and money, whether a"
                        + " metered controller pays, and what to be careful about. Every answer says what it assumed and"
                        + " why each number is what it is. A quantity always carries its unit; an answer's quantity can be"
                        + " sent back in a request. Under /v1 nothing is taken away and nothing more is asked; answers may"
                        + " gain properties, and their lists of values may grow. Every household in the examples is invented."
                        + " Local codes and licensed practice decide over any figure given here.")
                .license(new License().name("Apache-2.0").identifier("Apache-2.0"));
    }

    private PathItem item(Operation<?, ?> operation) {
        PathItem item = new PathItem().post(post(operation));
        return operation.query().isEmpty() ? item : item.get(get(operation));
    }

    private io.swagger.v3.oas.models.Operation post(Operation<?, ?> operation) {
        MediaType body = new MediaType().schema(reference(operation.requestType()));
        operation.examples().forEach(name -> body.addExamples(name, examples.read(operation, name, "request")));
        Content content = new Content().addMediaType("application/json", body);
        var post = described(operation, operation.id(), operation.description())
                .requestBody(new RequestBody().required(true).description("The request.").content(content))
                .responses(responses(operation, ErrorResponses.OF_POST));
        if (operation.textForm() != null) {
            addText(operation.textForm(), content, post);
        }
        return post;
    }

    /** Every operation again, as a stream of lines. */
    private PathItem bulk() {
        Operation<?, ?> shown = operations.get(0);
        Schema<Object> calculator = text();
        calculator.setEnum(operations.stream().map(operation -> (Object) operation.id()).toList());
        MediaType lines = new MediaType().schema(text().description("A request of the operation on each line (NDJSON). Blank"
                + " lines are skipped; a line has at most 64 KiB; the stream has no end of its own."))
                .addExamples(shown.id(), examples.requestLines(shown));
        MediaType answers = new MediaType().schema(text().description("For each line that is not blank, in the same order, one"
                + " with its number and status and either the answer or the problem, both as the operation gives them:"
                + " {\"line\": 1, \"status\": 200, \"answer\": {...}} or {\"line\": 2, \"status\": 422, \"problem\":"
                + " {...}}. A faulty line never ends the stream."))
                .addExamples(shown.id(), examples.answerLines(shown));
        var post = new io.swagger.v3.oas.models.Operation().operationId("calculateInBulk")
                .summary("Answer many requests of one operation, line by line")
                .description("Choose this for a list of cases, be it a hundred thousand: it takes one request of the named"
                        + " operation on each line and answers each on a line of its own, in the same order, while the list is"
                        + " still being sent. Read the answers while you send: who does not is waited for. For one case choose"
                        + " the operation itself, such as convertHardness, which answers a fault by its HTTP status.")
                .tags(List.of(CALCULATION))
                .requestBody(new RequestBody().required(true).description("The requests.")
                        .content(new Content().addMediaType("application/x-ndjson", lines)))
                .responses(addErrors(new ApiResponses().addApiResponse("200", new ApiResponse().description("The answers.")
                        .content(new Content().addMediaType("application/x-ndjson", answers))), ErrorResponses.OF_BULK));
        post.addParametersItem(new Parameter().in("path").name("calculator").required(true)
                .description("The operation, by its id.").schema(calculator).example("convertHardness"));
        return new PathItem().post(post);
    }

    /** The text itself, and its settings, which are no part of a JSON request and so never required of the whole. */
    private static void addText(BodyForm<?, ?> form, Content content, io.swagger.v3.oas.models.Operation post) {
        content.addMediaType(form.mediaType(), new MediaType().schema(text().description(form.description()))
                .addExamples("invented", new Example().summary("Invented.").value(form.example())));
        form.query().forEach(query -> post.addParametersItem(QueryParameters.of(query, form.query(), form.settingsType()).required(false)
                .description("With " + form.mediaType() + " only" + (query.required() ? ", and required there: " : ": ")
                        + QueryParameters.description(query, form.settingsType()))));
    }

    private static Schema<Object> text() {
        Schema<Object> text = new JsonSchema();
        text.setTypes(Set.of("string"));
        return text;
    }

    private io.swagger.v3.oas.models.Operation get(Operation<?, ?> operation) {
        var get = described(operation, operation.id() + "ByQuery", operation.description()
                + " This is the short form for links; the POST form takes more.")
                .responses(responses(operation, ErrorResponses.OF_GET).addApiResponse("304", notModified()));
        operation.query().forEach(query -> get.addParametersItem(QueryParameters.of(query, operation.query(), operation.requestType())));
        return get;
    }

    private static io.swagger.v3.oas.models.Operation described(Operation<?, ?> operation, String id, String description) {
        return new io.swagger.v3.oas.models.Operation().operationId(id).summary(operation.summary())
                .description(description).tags(List.of(CALCULATION));
    }

    private ApiResponses responses(Operation<?, ?> operation, List<ErrorResponses> errors) {
        MediaType answer = new MediaType().schema(reference(operation.answerType()));
        operation.examples().forEach(name -> answer.addExamples(name, examples.read(operation, name, "response")));
        Content content = new Content().addMediaType(Operation.JSON, answer);
        operation.forms().forEach(form -> content.addMediaType(form.mediaType(), text(form.description())
                .addExamples(form.example(), examples.read(operation, form))));
        ApiResponse response = new ApiResponse().description(operation.forms().isEmpty() ? "The answer."
                : "The answer, in the form that Accept gives the most weight; in JSON when it has no preference.");
        return addErrors(new ApiResponses().addApiResponse("200", response.content(content)), errors);
    }

    private static MediaType text(String description) {
        Schema<Object> text = new JsonSchema();
        text.setTypes(Set.of("string"));
        return new MediaType().schema(text.description(description));
    }

    private static ApiResponses addErrors(ApiResponses responses, List<ErrorResponses> errors) {
        errors.forEach(error -> responses.addApiResponse(Integer.toString(error.status()),
                new ApiResponse().$ref("#/components/responses/" + error.name())));
        return responses;
    }

    private static PathItem item(PageRoute page) {
        MediaType answer = new MediaType();
        if (page.answerType() != null) {
            answer.schema(reference(page.answerType()));
        } else {
            Schema<Object> any = new JsonSchema();
            any.setTypes(Set.of(page.mediaType().equals(Operation.JSON) ? "object" : "string"));
            answer.schema(any);
        }
        var get = new io.swagger.v3.oas.models.Operation().operationId(page.id()).summary(page.summary())
                .description(page.description()).tags(List.of(SERVICE)).responses(responses(page, answer));
        if (page.parameter() != null) {
            get.addParametersItem(new Parameter().in("path").name(page.parameter()).required(true)
                    .description("Which one.").schema(text()).example("invalid-request"));
        }
        return new PathItem().get(get);
    }

    private static ApiResponses responses(PageRoute page, MediaType answer) {
        Content content = new Content().addMediaType(page.mediaType(), answer);
        ApiResponses responses = addErrors(new ApiResponses().addApiResponse("200", new ApiResponse()
                .description(page.summary() + ".").content(content)), ErrorResponses.OF_PAGE);
        if (page.cached()) {
            responses.addApiResponse("304", notModified());
        }
        if (page.whenStopping() != null) {
            responses.addApiResponse("503", ErrorResponses.comeBack(new ApiResponse().description(page.whenStopping())
                    .content(content)));
        }
        return responses;
    }

    private static ApiResponse notModified() {
        return new ApiResponse().description("What the caller has by the ETag in If-None-Match is still the answer.");
    }

    private static Schema<Object> reference(Class<?> type) {
        Schema<Object> schema = new JsonSchema();
        schema.set$ref("#/components/schemas/" + type.getSimpleName());
        return schema;
    }
}
