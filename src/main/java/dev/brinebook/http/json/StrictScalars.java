// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.module.SimpleDeserializers;
import com.fasterxml.jackson.databind.module.SimpleModule;
import dev.brinebook.api.JsonObject;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.WireNames;
import dev.brinebook.text.Message;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads scalars without coercion: no text for a number, no number for a name, no infinity by overflow. */
final class StrictScalars {

    /** Largest exponent read; far beyond any quantity, and a double still holds it. */
    private static final int MAX_EXPONENT = 300;
    private static final int LONGEST_ECHO = 40;
    /** General categories Cc, Cf, Cs, Zl and Zp of the Unicode Standard, section 4.5. */
    private static final Set<Byte> INVISIBLE = Set.of(Character.CONTROL, Character.FORMAT, Character.SURROGATE,
            Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR);

    /** Digits that every long can hold. */
    private static final int LONGEST_LONG = 18;

    private StrictScalars() {
    }

    static SimpleModule module() {
        SimpleModule module = new SimpleModule("strict scalars");
        module.setDeserializers(new EnumDeserializers());
        module.addDeserializer(BigDecimal.class, scalar(BigDecimal.class, StrictScalars::number));
        module.addDeserializer(Integer.class, scalar(Integer.class, StrictScalars::wholeNumber));
        module.addDeserializer(Long.class, scalar(Long.class, StrictScalars::longNumber));
        module.addDeserializer(Boolean.class, scalar(Boolean.class, StrictScalars::flag));
        module.addDeserializer(String.class, scalar(String.class, StrictScalars::text));
        module.addDeserializer(LocalDate.class, scalar(LocalDate.class, StrictScalars::date));
        module.addDeserializer(JsonObject.class, scalar(JsonObject.class, StrictScalars::object));
        return module;
    }

    private interface Reading<T> {
        T read(JsonParser parser, DeserializationContext context) throws IOException;
    }

    private static <T> JsonDeserializer<T> scalar(Class<T> type, Reading<T> reading) {
        return new StdDeserializer<>(type) {
            private static final long serialVersionUID = 1L;

            @Override
            public T deserialize(JsonParser parser, DeserializationContext context) throws IOException {
                return reading.read(parser, context);
            }
        };
    }

    private static JsonObject object(JsonParser parser, DeserializationContext context) throws IOException {
        if (parser.currentToken() != JsonToken.START_OBJECT) {
            return FaultCollector.wrongType(context, Message.of("problem.http.mustObjectGiven", FaultCollector.name(parser)), parser);
        }
        StringWriter text = new StringWriter();
        try (JsonGenerator copy = parser.getCodec().getFactory().createGenerator(text)) {
            copy.copyCurrentStructureExact(parser);
        }
        return new JsonObject(text.toString());
    }

    private static BigDecimal number(JsonParser parser, DeserializationContext context) throws IOException {
        if (!parser.currentToken().isNumeric()) {
            return FaultCollector.wrongType(context, Message.of("problem.http.mustNumberGiven", FaultCollector.name(parser)), parser);
        }
        try {
            BigDecimal value = parser.getDecimalValue();
            long exponent = (long) value.precision() - value.scale();
            if (Math.abs(exponent) <= MAX_EXPONENT && Math.abs((long) value.scale()) <= MAX_EXPONENT) {
                return value;
            }
        } catch (NumberFormatException tooManyDigitsOfExponent) {
            // reported below, together with an exponent out of range
        }
        throw JsonReader.malformed(Message.of("problem.http.numberTooLargeOr"), parser.currentTokenLocation());
    }

    private static Integer wholeNumber(JsonParser parser, DeserializationContext context) throws IOException {
        Long value = longNumber(parser, context);
        if (value == null) {
            return null;
        }
        if (value != value.intValue()) {
            FaultCollector.violations(context).add(new Violation(FaultCollector.pointer(parser), Code.OUT_OF_RANGE,
                    Message.of("problem.http.farOutRange")));
            return null;
        }
        return value.intValue();
    }

    private static Long longNumber(JsonParser parser, DeserializationContext context) throws IOException {
        BigDecimal value = number(parser, context);
        if (value == null) {
            return null;
        }
        BigDecimal whole = value.stripTrailingZeros();
        if (whole.scale() > 0) {
            FaultCollector.violations(context).add(new Violation(FaultCollector.pointer(parser), Code.WRONG_TYPE,
                    Message.of("problem.http.mustWholeNumber")));
            return null;
        }
        if (whole.precision() - whole.scale() > LONGEST_LONG) {
            FaultCollector.violations(context).add(new Violation(FaultCollector.pointer(parser), Code.OUT_OF_RANGE,
                    Message.of("problem.http.farOutRange")));
            return null;
        }
        return whole.longValueExact();
    }

    private static Boolean flag(JsonParser parser, DeserializationContext context) throws IOException {
        if (!parser.currentToken().isBoolean()) {
            return FaultCollector.wrongType(context, Message.of("problem.http.mustTrueOrFalse", FaultCollector.name(parser)), parser);
        }
        return parser.getBooleanValue();
    }

    private static String text(JsonParser parser, DeserializationContext context) throws IOException {
        if (parser.currentToken() != JsonToken.VALUE_STRING) {
            return FaultCollector.wrongType(context, Message.of("problem.http.mustTextGiven", FaultCollector.name(parser)), parser);
        }
        String text = parser.getText();
        if (!JsonReader.isPlain(text)) {
            FaultCollector.violations(context).add(new Violation(FaultCollector.pointer(parser), Code.UNKNOWN_VALUE,
                    Message.of("problem.http.mustPlainTextWithout")));
            return null;
        }
        return text;
    }

    /** What a reader does not see, or sees elsewhere: control, format and direction characters, separators of lines, half characters. */
    static boolean isInvisible(int character) {
        return INVISIBLE.contains((byte) Character.getType(character));
    }

    private static LocalDate date(JsonParser parser, DeserializationContext context) throws IOException {
        String text = text(parser, context);
        if (text == null) {
            return null;
        }
        try {
            LocalDate date = LocalDate.parse(text);
            if (date.getYear() >= 1900 && date.getYear() <= 2199) {
                return date;
            }
        } catch (DateTimeParseException notADate) {
            // reported below, together with a year out of range
        }
        FaultCollector.violations(context).add(new Violation(FaultCollector.pointer(parser), Code.UNKNOWN_VALUE,
                Message.of("problem.http.mustDate19002199")));
        return null;
    }

    /** Enums by their names on the wire, with the nearest name reported for an unknown one. */
    private static final class EnumDeserializers extends SimpleDeserializers {
        private static final long serialVersionUID = 1L;

        @Override
        public JsonDeserializer<?> findEnumDeserializer(Class<?> type, DeserializationConfig config,
                BeanDescription description) {
            return enumeration(type.asSubclass(Enum.class));
        }

        @Override
        public boolean hasDeserializerFor(DeserializationConfig config, Class<?> type) {
            return type.isEnum() || super.hasDeserializerFor(config, type);
        }

        private static <E extends Enum<E>> JsonDeserializer<?> enumeration(@SuppressWarnings("rawtypes") Class type) {
            @SuppressWarnings("unchecked")
            Class<E> typed = type;
            Map<String, E> byName = Arrays.stream(typed.getEnumConstants())
                    .collect(Collectors.toMap(WireNames::of, Function.identity()));
            List<String> names = WireNames.all(typed);
            return scalar(typed, (parser, context) -> constant(byName, names, parser, context));
        }

        private static <E> E constant(Map<String, E> byName, List<String> names, JsonParser parser,
                DeserializationContext context) throws IOException {
            if (parser.currentToken() != JsonToken.VALUE_STRING) {
                return FaultCollector.wrongType(context, Message.of("problem.http.mustOneGiven",
                        String.join(", ", names), FaultCollector.name(parser)), parser);
            }
            E constant = byName.get(parser.getText());
            if (constant == null) {
                String received = parser.getText();
                FaultCollector.violations(context).add(new Violation(FaultCollector.pointer(parser), Code.UNKNOWN_VALUE,
                        Message.of("problem.http.mustOne", String.join(", ", names)), Violation.names(names),
                        WireNames.nearest(received, names).orElse(null),
                        harmless(received) ? received : null));
            }
            return constant;
        }

        private static boolean harmless(String text) {
            return text.length() <= LONGEST_ECHO && text.matches("[\\w ./°-]*");
        }
    }
}
