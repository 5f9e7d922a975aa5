package dev.brinebook.http;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.deser.DeserializationProblemHandler;
import com.fasterxml.jackson.databind.deser.ValueInstantiator;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.WireNames;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;

/** Writes down what does not fit a record and lets the parser go on, so that one answer can tell every fault. */
final class FaultCollector extends DeserializationProblemHandler {

    /** Attribute of the reader under which the faults are gathered. */
    static final String VIOLATIONS = "violations";

    @Override
    public boolean handleUnknownProperty(DeserializationContext context, JsonParser parser,
            JsonDeserializer<?> deserializer, Object beanOrClass, String name) throws IOException {
        Class<?> type = beanOrClass instanceof Class<?> c ? c : beanOrClass.getClass();
        List<String> known = Arrays.stream(type.getRecordComponents()).map(RecordComponent::getName).toList();
        String nearest = WireNames.nearest(name, known).orElse(null);
        String hint = nearest == null ? "known are " + String.join(", ", known) : "did you mean " + nearest + "?";
        String owner = owner(context.getParser()).pathAsPointer().toString();
        Violations place = violations(context).at(owner, name);
        place.forgetBelow();
        place.add(new Violation(place.pointer(), Code.UNKNOWN_FIELD, "is not known here: " + hint,
                nearest == null ? String.join(", ", known) : null, nearest, null));
        parser.skipChildren();
        return true;
    }

    /**
     * The place of the object that has the unknown property. The library hands such a property over from a buffer, whose
     * own place is wrong when the value is an object; where the source itself stands tells the right one.
     */
    private static JsonStreamContext owner(JsonParser source) {
        JsonStreamContext here = source.getParsingContext();
        return switch (source.currentToken()) {
            case END_OBJECT -> here;
            case START_OBJECT, START_ARRAY -> here.getParent().getParent();
            default -> here.getParent();
        };
    }

    @Override
    public Object handleUnexpectedToken(DeserializationContext context, JavaType target, JsonToken token,
            JsonParser parser, String message) throws IOException {
        return wrongType(context, target.isCollectionLikeType() ? "a list" : "an object", parser);
    }

    @Override
    public Object handleMissingInstantiator(DeserializationContext context, Class<?> target,
            ValueInstantiator instantiator, JsonParser parser, String message) throws IOException {
        return wrongType(context, "an object", parser);
    }

    /** Reports the value that the parser stands at, skips it, and answers nothing in its place. */
    static <T> T wrongType(DeserializationContext context, String wanted, JsonParser parser) throws IOException {
        if (parser.currentToken() != JsonToken.VALUE_NULL) {
            violations(context).add(new Violation(pointer(parser), Code.WRONG_TYPE,
                    "must be " + wanted + ", is " + name(parser.currentToken())));
        }
        parser.skipChildren();
        return null;
    }

    static Violations violations(DeserializationContext context) {
        return (Violations) context.getAttribute(VIOLATIONS);
    }

    static String pointer(JsonParser parser) {
        return parser.getParsingContext().pathAsPointer().toString();
    }

    private static String name(JsonToken token) {
        return switch (token) {
            case START_OBJECT -> "an object";
            case START_ARRAY -> "a list";
            case VALUE_STRING -> "a text";
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> "a number";
            case VALUE_TRUE, VALUE_FALSE -> "true or false";
            default -> "something else";
        };
    }
}
