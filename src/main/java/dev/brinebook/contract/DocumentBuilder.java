// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.BodyForm;
import dev.brinebook.api.CsvColumnsAnswer;
import dev.brinebook.api.ExplanationAnswer;
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
import io.swagger.v3.oas.models.security.SecurityRequirement;
import io.swagger.v3.oas.models.security.SecurityScheme;
import io.swagger.v3.oas.models.servers.Server;
import io.swagger.v3.oas.models.tags.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Puts the OpenAPI 3.1 document together. */
final class DocumentBuilder {

    static final String CALCULATION = "calculation";
    private static final String NOT_MODIFIED = "NotModified";
    private static final String KEY = "key";
    /** Values of a path that are listed at its parameter; more are those that the document refers to elsewhere. */
    private static final int LONGEST_LIST = 50;
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
            schemas.addCalculated(operation.answerType());
            paths.addPathItem(operation.path(), item(operation));
        }
        BulkPaths bulk = new BulkPaths(operations);
        schemas.addAnswer(CsvColumnsAnswer.class);
        paths.addPathItem(Contract.BULK_PATH, bulk.stream());
        paths.addPathItem(Contract.TEMPLATE_PATH, bulk.template());
        schemas.addAnswer(ExplanationAnswer.class);
        paths.addPathItem(Contract.EXPLANATION_PATH, ExplanationPath.item());
        for (PageRoute page : pages.stream().filter(each -> !each.isForPeople()).toList()) {
            if (page.answerType() != null) {
                schemas.addAnswer(page.answerType());
            }
            paths.addPathItem(page.path(), item(page));
        }
        Components components = new Components().schemas(schemas.build()).headers(ResponseHeaders.components());
        ErrorResponses.ALL.forEach(error -> components.addResponses(error.name(), error.response(problem)));
        QueryParameters.ofParts().forEach(each -> components.addParameters(each.getName(), each));
        operations.stream().flatMap(operation -> operation.choices().stream()).forEach(choice ->
                components.addParameters(choice.name(), QueryParameters.of(choice)));
        components.addParameters(BulkPaths.CALCULATOR, BulkPaths.calculator(operations));
        components.addParameters(QueryParameters.MODEL, QueryParameters.ofModel());
        components.addResponses(NOT_MODIFIED, notModified());
        components.addSecuritySchemes(KEY, new SecurityScheme().type(SecurityScheme.Type.HTTP).scheme("bearer")
                .description("Required only if the service uses keys. Its operator issues them."));
        OpenAPI document = new OpenAPI(SpecVersion.V31).openapi("3.1.0").info(info()).paths(paths).components(components);
        document.setServers(List.of(new Server().url("/").description("This service.")));
        document.setTags(List.of(
                new Tag().name(CALCULATION).description("The calculators. Each is safe to retry: it changes nothing."),
                new Tag().name(SERVICE).description("The service itself: health, version, contract and pages.")));
        document.setSecurity(List.of());
        return document;
    }

    /** A key, or none: the contract is the same for services with and without keys. */
    static List<SecurityRequirement> keyWhereAsked() {
        return List.of(new SecurityRequirement(), new SecurityRequirement().addList(KEY));
    }

    private static Info info() {
        return new Info().title("Brinebook").version(ModelVersion.CURRENT)
                .summary("The calculator for household water softeners.")
                .description("From a water test, a household and the existing softener it calculates the compensated hardness, whether "
                        + "the softener is large enough, the settings, the use of salt and water and its cost, whether a metered "
                        + "controller pays, and the cautions to show. With detail=full an answer lists its assumptions, and the "
                        + "formula and source of each number. A quantity always has its unit. A quantity of an answer can be sent "
                        + "back in a request. Agents "
                        + "reach every operation by four tools at /mcp (Model Context Protocol). Under /v1 nothing is removed and no new "
                        + "property is required. Answers may gain properties, and their lists of values may grow. All households in the "
                        + "examples are invented. Pages for people are at /docs. Local codes and licensed practice take "
                        + "precedence over these "
                        + "figures. Every response "
                        + "has the headers Link, to this document and the documentation, X-Content-Type-Options: nosniff and "
                        + "Referrer-Policy: "
                        + "no-referrer. Where the service has a rate limit, every response under /v1 also has RateLimit and "
                        + "RateLimit-Policy, as 429 describes them.")
                .license(new License().name("Apache-2.0").identifier("Apache-2.0"));
    }

    private PathItem item(Operation<?, ?> operation) {
        PathItem item = new PathItem().post(post(operation));
        return operation.query().isEmpty() ? item : item.get(get(operation));
    }

    private io.swagger.v3.oas.models.Operation post(Operation<?, ?> operation) {
        MediaType body = new MediaType().schema(reference(operation.requestType()));
        operation.examples().forEach(name -> body.addExamples(name, Examples.of(operation.exampleFile(name, "request"))));
        Content content = new Content().addMediaType("application/json", body);
        var post = described(operation, operation.id(), operation.description())
                .requestBody(new RequestBody().required(true).description("The request.").content(content))
                .responses(responses(operation));
        if (operation.textForm() != null) {
            addText(operation.textForm(), content, post);
        }
        QueryParameters.partsByReference().forEach(post::addParametersItem);
        operation.choices().forEach(choice -> post.addParametersItem(QueryParameters.reference(choice.name())));
        post.addParametersItem(QueryParameters.modelByReference());
        return post;
    }

    /** The text itself, and its settings, which are no part of a JSON request and so never required of the whole. */
    private static void addText(BodyForm<?, ?> form, Content content, io.swagger.v3.oas.models.Operation post) {
        content.addMediaType(form.mediaType(), new MediaType().schema(text().description(form.description()))
                .addExamples("invented", new Example().summary("Invented.").value(form.example())));
        form.query().forEach(query -> post.addParametersItem(QueryParameters.of(query, form.query(), form.settingsType()).required(false)
                .description("With " + form.mediaType() + " only" + (query.required() ? ", and required there: " : ": ")
                        + QueryParameters.description(query, form.settingsType()))));
    }

    static Schema<Object> text() {
        Schema<Object> text = new JsonSchema();
        text.setTypes(Set.of("string"));
        return text;
    }

    private io.swagger.v3.oas.models.Operation get(Operation<?, ?> operation) {
        var get = described(operation, operation.id() + "ByQuery", "Choose this for a link or a cell of a spreadsheet: the short form of "
                + operation.id() + ", with the same answer. The POST form says what it answers, and takes more properties.")
                .responses(sameResponses(operation)
                        .addApiResponse("304", referenceTo(NOT_MODIFIED)));
        operation.query().forEach(query -> get.addParametersItem(QueryParameters.of(query, operation.query(), operation.requestType())));
        QueryParameters.partsByReference().forEach(get::addParametersItem);
        operation.choices().forEach(choice -> get.addParametersItem(QueryParameters.reference(choice.name())));
        get.addParametersItem(QueryParameters.modelByReference());
        return get;
    }

    private static io.swagger.v3.oas.models.Operation described(Operation<?, ?> operation, String id, String description) {
        return new io.swagger.v3.oas.models.Operation().operationId(id).summary(operation.summary())
                .description(description + " Formulas, sources and limits: /docs/operations/" + operation.id() + ".")
                .tags(List.of(CALCULATION)).security(keyWhereAsked());
    }

    private ApiResponses responses(Operation<?, ?> operation) {
        MediaType answer = new MediaType().schema(reference(operation.answerType()));
        operation.examples().forEach(name -> answer.addExamples(name, Examples.of(operation.exampleFile(name, "response"))));
        Content content = new Content().addMediaType(Operation.JSON, answer);
        operation.forms().forEach(form -> content.addMediaType(form.mediaType(), form(operation, form)));
        ApiResponse response = new ApiResponse().description(operation.forms().isEmpty() ? "The answer."
                : "The answer, in the format that Accept prefers. JSON by default.");
        return addErrors(new ApiResponses().addApiResponse("200", calculated(response.content(content), headers(operation))),
                ErrorResponses.OF_POST);
    }

    /** The answers of the POST form, whose examples are not listed again. */
    private static ApiResponses sameResponses(Operation<?, ?> operation) {
        Content content = new Content();
        operation.answerMediaTypes().forEach(type -> content.addMediaType(type, type.equals(Operation.JSON)
                ? new MediaType().schema(reference(operation.answerType())) : text("As by POST.")));
        return addErrors(new ApiResponses().addApiResponse("200", calculated(new ApiResponse().description("The answer, as by POST.")
                .content(content), headers(operation, ResponseHeaders.ETAG))), ErrorResponses.OF_GET);
    }

    private static List<String> headers(Operation<?, ?> operation, String... others) {
        return Stream.concat(Stream.of(others), operation.forms().stream().filter(form -> form.contentPolicy() != null).limit(1)
                .map(form -> ResponseHeaders.POLICY)).toList();
    }

    /** An answer in the language of its caller, which keys and rates concern. */
    static ApiResponse calculated(ApiResponse response, List<String> headers) {
        ResponseHeaders.on(response, ResponseHeaders.ALWAYS);
        ResponseHeaders.on(response, List.of(ResponseHeaders.LANGUAGE, ResponseHeaders.MODEL));
        return ResponseHeaders.on(response, headers);
    }

    private MediaType form(Operation<?, ?> operation, AnswerForm<?> form) {
        MediaType shown = text(form.description());
        if (form.isText()) {
            return shown.addExamples(form.example(), Examples.of(operation.exampleFile(form)));
        }
        shown.getSchema().setFormat("binary");
        return shown;
    }

    static MediaType text(String description) {
        Schema<Object> text = new JsonSchema();
        text.setTypes(Set.of("string"));
        return new MediaType().schema(text.description(description));
    }

    private static ApiResponse referenceTo(String response) {
        return new ApiResponse().$ref("#/components/responses/" + response);
    }

    static ApiResponses addErrors(ApiResponses responses, List<ErrorResponses> errors) {
        errors.forEach(error -> responses.addApiResponse(Integer.toString(error.status()),
                referenceTo(error.name())));
        return responses;
    }

    private PathItem item(PageRoute page) {
        var get = new io.swagger.v3.oas.models.Operation().operationId(page.id()).summary(page.summary())
                .description(page.description()).tags(List.of(SERVICE)).responses(responses(page));
        if (guarded(page)) {
            get.security(keyWhereAsked());
        }
        if (page.parameter() != null) {
            Schema<Object> schema = text();
            boolean listed = page.values().size() <= LONGEST_LIST;
            schema.setEnum(listed ? List.copyOf(page.values()) : null);
            get.addParametersItem(new Parameter().in("path").name(page.parameter()).required(true)
                    .description(listed ? "Part of the path, as listed." : "Name of a file, as an example of this document refers to it.")
                    .schema(schema).example(page.values().get(0)));
        }
        return new PathItem().get(get);
    }

    private static boolean guarded(PageRoute page) {
        return page.path().startsWith("/v1/");
    }

    private MediaType answer(PageRoute page, String mediaType) {
        if (!mediaType.equals(Operation.JSON)) {
            return text(page.summary() + ".");
        }
        Schema<Object> any = new JsonSchema();
        any.setTypes(Set.of("object"));
        MediaType answer = new MediaType().schema(page.answerType() == null ? any : reference(page.answerType()));
        if (page.example() != null) {
            answer.addExamples("excerpt", examples.excerpt(page.example().get()));
        }
        return answer;
    }

    private ApiResponses responses(PageRoute page) {
        Content content = new Content();
        page.mediaTypes().forEach(type -> content.addMediaType(type, answer(page, type)));
        ApiResponse shown = ResponseHeaders.on(new ApiResponse().description(page.summary() + ".").content(content), headers(page));
        ApiResponses responses = addErrors(new ApiResponses().addApiResponse("200", shown), guarded(page)
                ? ErrorResponses.OF_GUARDED_PAGE : ErrorResponses.OF_PAGE);
        if (page.cached()) {
            responses.addApiResponse("304", referenceTo(NOT_MODIFIED));
        }
        if (page.whenStopping() != null) {
            responses.addApiResponse("503", ResponseHeaders.on(ResponseHeaders.on(new ApiResponse()
                    .description(page.whenStopping()).content(content), headers(page)), List.of(ResponseHeaders.RETRY_AFTER)));
        }
        return responses;
    }

    private static List<String> headers(PageRoute page) {
        List<String> headers = new ArrayList<>(ResponseHeaders.ALWAYS);
        if (page.cached()) {
            headers.add(ResponseHeaders.ETAG);
        }
        if (page.mediaTypes().contains("text/html")) {
            headers.add(ResponseHeaders.POLICY);
        }
        if (page.english()) {
            headers.add(ResponseHeaders.LANGUAGE);
        }
        return headers;
    }

    private static ApiResponse notModified() {
        ApiResponse response = new ApiResponse().description("The answer with the ETag in If-None-Match is still current.");
        return ResponseHeaders.on(calculated(response, List.of(ResponseHeaders.ETAG)), List.of(ResponseHeaders.POLICY));
    }

    static Schema<Object> reference(Class<?> type) {
        Schema<Object> schema = new JsonSchema();
        schema.set$ref("#/components/schemas/" + type.getSimpleName());
        return schema;
    }
}
