// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import dev.brinebook.api.Explainer;
import dev.brinebook.api.ExplanationAnswer;
import dev.brinebook.api.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.parameters.RequestBody;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.responses.ApiResponses;
import java.util.List;
import java.util.Set;

/** Every operation again, to explain single results of its answer. */
final class ExplanationPath {

    static final String ID = "explainResult";
    /** Operation and name of the example, and what it asks for. */
    static final String EXAMPLE_CALCULATOR = "assess";
    static final String EXAMPLE = "well-family";
    static final List<String> EXAMPLE_POINTERS = List.of("/settings/reserve", "/hardness/compensated");
    static final String EXAMPLE_FILE = ID + "." + EXAMPLE + ".response.json";

    private ExplanationPath() {
    }

    static PathItem item() {
        Schema<Object> request = new JsonSchema();
        request.setTypes(Set.of("object"));
        request.setDescription("The request of the operation, as its schema has it.");
        MediaType body = new MediaType().schema(request).addExamples(EXAMPLE,
                Examples.of(EXAMPLE_CALCULATOR + "." + EXAMPLE + ".request.json"));
        MediaType answer = new MediaType().schema(DocumentBuilder.reference(ExplanationAnswer.class))
                .addExamples(EXAMPLE, Examples.of(EXAMPLE_FILE));
        var post = new io.swagger.v3.oas.models.Operation().operationId(ID).summary("Explain single results of an answer")
                .description("Choose this to say why a number is what it is: send the request of an operation again and point at one "
                        + "to " + Explainer.MAX_POINTERS + " results of its answer. For each it returns the value, the formulas in words "
                        + "with the numbers of the case, their sources, with a page or DOI where one is known, and the results and inputs "
                        + "that it rests on. "
                        + "For the answer itself choose the operation, such as assess. Its answer with detail=full has "
                        + "all formulas at once.")
                .tags(List.of(DocumentBuilder.CALCULATION)).security(DocumentBuilder.keyWhereAsked())
                .requestBody(new RequestBody().required(true).description("The request of the operation.")
                        .content(new Content().addMediaType(Operation.JSON, body)))
                .responses(DocumentBuilder.addErrors(new ApiResponses().addApiResponse("200", DocumentBuilder.calculated(new ApiResponse()
                        .description("The explanations.").content(new Content().addMediaType(Operation.JSON, answer)), List.of())),
                        ErrorResponses.OF_BULK));
        return new PathItem().post(post.addParametersItem(QueryParameters.reference(BulkPaths.CALCULATOR)).addParametersItem(pointer())
                .addParametersItem(QueryParameters.modelByReference()));
    }

    private static Parameter pointer() {
        Schema<Object> pointers = new JsonSchema();
        pointers.setTypes(Set.of("array"));
        pointers.items(DocumentBuilder.text()).minItems(1).maxItems(Explainer.MAX_POINTERS);
        return new Parameter().in("query").name(Explainer.POINTER).required(true).schema(pointers)
                .style(Parameter.StyleEnum.FORM).explode(true).example(EXAMPLE_POINTERS)
                .description("JSON pointer to a result in the answer, once to " + Explainer.MAX_POINTERS + " times. `*` stands for every "
                        + "element of a list. A pointer to an object or list explains all that it holds.");
    }
}
