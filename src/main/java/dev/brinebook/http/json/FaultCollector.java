// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.json;

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
import dev.brinebook.text.Message;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;

/** Records what does not fit a record and lets the parser continue, so that one answer can report every error. */
public final class FaultCollector extends DeserializationProblemHandler {

    @Override
    public boolean handleUnknownProperty(DeserializationContext context, JsonParser parser,
            JsonDeserializer<?> deserializer, Object beanOrClass, String name) throws IOException {
        Class<?> type = beanOrClass instanceof Class<?> c ? c : beanOrClass.getClass();
        List<String> known = Arrays.stream(type.getRecordComponents()).map(RecordComponent::getName).toList();
        String owner = owner(context.getParser()).pathAsPointer().toString();
        Violations place = violations(context).at(owner, name);
        place.forgetBelow();
        place.add(Violation.unknownField(place.pointer(), name, known));
        parser.skipChildren();
        return true;
    }

    /**
     * The place of the object that has the unknown property. The library hands such a property over from a buffer, whose
     * own place is wrong when the value is an object; the position of the source itself is right.
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
        return wrongType(context, target.isCollectionLikeType() ? Message.of("problem.http.mustListGiven", name(parser))
                : Message.of("problem.http.mustObjectGiven", name(parser)), parser);
    }

    @Override
    public Object handleMissingInstantiator(DeserializationContext context, Class<?> target,
            ValueInstantiator instantiator, JsonParser parser, String message) throws IOException {
        return wrongType(context, Message.of("problem.http.mustObjectGiven", name(parser)), parser);
    }

    /** Reports the current value of the parser, skips it, and returns nothing in its place. */
    static <T> T wrongType(DeserializationContext context, Message fault, JsonParser parser) throws IOException {
        if (parser.currentToken() != JsonToken.VALUE_NULL) {
            violations(context).add(new Violation(pointer(parser), Code.WRONG_TYPE, fault));
        }
        parser.skipChildren();
        return null;
    }

    static Violations violations(DeserializationContext context) {
        return ((NullWatchingParser) context.getParser()).violations();
    }

    static String pointer(JsonParser parser) {
        return parser.getParsingContext().pathAsPointer().toString();
    }

    /** The current value of the parser. */
    static Message name(JsonParser parser) {
        return switch (parser.currentToken()) {
            case START_OBJECT -> Message.of("faultCollector.object");
            case START_ARRAY -> Message.of("faultCollector.list");
            case VALUE_STRING -> Message.of("faultCollector.text");
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Message.of("faultCollector.number");
            case VALUE_TRUE, VALUE_FALSE -> Message.of("faultCollector.trueOrFalse");
            default -> Message.of("faultCollector.anotherType");
        };
    }
}
