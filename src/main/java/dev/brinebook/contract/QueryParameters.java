// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.contract;

import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.DiscriminatorValues;
import dev.brinebook.api.FormChoice;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Operation.QueryParameter;
import dev.brinebook.api.Property;
import dev.brinebook.api.WireNames;
import dev.brinebook.model.Model;
import dev.brinebook.quantity.Quantity;
import io.swagger.v3.oas.models.media.JsonSchema;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.Parameter;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** Parameters of a query, with the descriptions of the record that they are read into. */
final class QueryParameters {

    /** In every text about an answer in part. */
    private static final String IN_PART = " Cautions of severity stop and warning, and modelVersion, are in every answer. An answer in "
            + "part has the same schema, with properties absent, required ones too. For answers in application/json, and lists of them.";

    /** Name of the component. */
    static final String MODEL = "modelVersion";

    private QueryParameters() {
    }

    /** The parameters that choose among the parts of an answer, the same for every operation. */
    static List<Parameter> ofParts() {
        Schema<Object> detail = DocumentBuilder.text();
        detail.setEnum(List.copyOf(WireNames.all(AnswerParts.Detail.class)));
        detail.addExtension("x-default", WireNames.of(AnswerParts.Detail.STANDARD));
        Schema<Object> fields = new JsonSchema();
        fields.setTypes(Set.of("array"));
        fields.items(DocumentBuilder.text()).minItems(1).maxItems(AnswerParts.MAX_FIELDS);
        return List.of(new Parameter().in("query").name(AnswerParts.DETAIL).required(false).schema(detail)
                .example(WireNames.of(AnswerParts.Detail.NUMBERS)).description("Detail of the answer. numbers: numbers and codes "
                        + "without texts: no summary, verdict, assumptions, basis or cautions of severity info. standard: everything but "
                        + "assumptions and basis. full: everything. The numbers are the same. Default: standard." + IN_PART),
                new Parameter().in("query").name(AnswerParts.FIELDS).required(false).schema(fields)
                        .style(Parameter.StyleEnum.FORM).explode(false).example(List.of("summary"))
                        .description("The only properties wanted of the answer: names as in its schema, joined by dots, such as "
                                + "settings.reserve or findings.code. A name selects everything below it, and in a list the same of "
                                + "every element. A property that the detail leaves out is given when it is named. Default: all of the "
                                + "detail." + IN_PART));
    }

    /** A choice about the forms of an answer, as a component. */
    static Parameter of(FormChoice<?> choice) {
        Schema<Object> values = DocumentBuilder.text();
        values.setEnum(List.copyOf(choice.names()));
        if (choice.usual() != null) {
            values.addExtension("x-default", WireNames.of(choice.usual()));
        }
        return new Parameter().in("query").name(choice.name()).required(false).schema(values)
                .example(choice.names().get(choice.names().size() - 1)).description(choice.description());
    }

    /** The header that chooses the version of the model, as a component. */
    static Parameter ofModel() {
        Schema<Object> versions = DocumentBuilder.text();
        versions.setEnum(List.copyOf(Model.versions()));
        return new Parameter().in("header").name(ResponseHeaders.MODEL).required(false).schema(versions)
                .example(Model.PREVIOUS.version()).description("Version of the formulas and data to calculate with, one of the last "
                        + "two. Equal requests with the same version get equal answers. Default: " + Model.CURRENT.version() + ".");
    }

    static Parameter modelByReference() {
        return reference(MODEL);
    }

    /** References to them. */
    static List<Parameter> partsByReference() {
        return List.of(reference(AnswerParts.DETAIL), reference(AnswerParts.FIELDS));
    }

    static Parameter reference(String name) {
        return new Parameter().$ref("#/components/parameters/" + name);
    }

    /** {@code query}, one of {@code all} that make a {@code request}. */
    static Parameter of(QueryParameter query, List<QueryParameter> all, Class<?> request) {
        if (query.isWhole()) {
            Schema<Object> json = DocumentBuilder.text();
            json.setContentMediaType(Operation.JSON);
            return new Parameter().in("query").name(query.name()).required(query.required()).description(query.description())
                    .schema(json).example(query.example());
        }
        List<RecordComponent> path = path(query.pointer(), request);
        RecordComponent last = path.get(path.size() - 1);
        Schema<Object> schema = new JsonSchema();
        schema.setTypes(Set.of(!query.number() ? "string" : last.getType() == Integer.class ? "integer" : "number"));
        if (last.getType().isEnum()) {
            schema.setEnum(choice(query, last, all));
        } else if (query.number() && !isQuantity(path)) {
            PropertySchemaWriter.bound(schema, last.getAnnotation(Property.class));
        } else if (query.number()) {
            PropertySchemaWriter.range(path.get(path.size() - 2).getAnnotation(Property.class))
                    .ifPresent(range -> schema.addExtension("x-range", range));
        }
        Object example = query.number() ? new BigDecimal(query.example()) : query.example();
        return new Parameter().in("query").name(query.name()).required(query.required())
                .description(description(query, request)).schema(schema).example(example);
    }

    static String description(QueryParameter query, Class<?> request) {
        List<RecordComponent> path = path(query.pointer(), request);
        boolean quantity = isQuantity(path);
        RecordComponent described = path.get(path.size() - (quantity ? 2 : 1));
        return query.description() + (query.number() ? PropertySchemaWriter.range(described.getAnnotation(Property.class), quantity) : "");
    }

    private static boolean isQuantity(List<RecordComponent> path) {
        return Quantity.class.isAssignableFrom(path.get(path.size() - 1).getDeclaringRecord());
    }

    /** What a choice offers: no kind that needs a property for which there is no parameter. */
    private static List<Object> choice(QueryParameter query, RecordComponent last, List<QueryParameter> all) {
        String owner = query.pointer().substring(0, query.pointer().lastIndexOf('/') + 1);
        List<RecordComponent> beside = List.of(last.getDeclaringRecord().getRecordComponents());
        return WireNames.all(last.getType()).stream().filter(name -> beside.stream().noneMatch(component -> {
            Property property = component.getAnnotation(Property.class);
            return property.kinds().length > 0 && property.required() && DiscriminatorValues.belongs(property, name)
                    && all.stream().noneMatch(other -> other.pointer().startsWith(owner + component.getName()));
        })).map(Object.class::cast).toList();
    }

    /** The components that a pointer leads through. */
    private static List<RecordComponent> path(String pointer, Class<?> request) {
        List<RecordComponent> path = new ArrayList<>();
        Class<?> type = request;
        for (String name : pointer.substring(1).split("/")) {
            RecordComponent next = Arrays.stream(type.getRecordComponents()).filter(one -> one.getName().equals(name)).findFirst()
                    .orElseThrow(() -> new IllegalStateException(pointer + " leads nowhere"));
            path.add(next);
            type = next.getType();
        }
        return path;
    }
}
