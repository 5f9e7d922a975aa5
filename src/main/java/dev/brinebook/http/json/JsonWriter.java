// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.databind.BeanProperty;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.ContextualSerializer;
import com.fasterxml.jackson.databind.ser.FilterProvider;
import com.fasterxml.jackson.databind.ser.impl.SimpleFilterProvider;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.WireNames;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Writes answers: what is absent is left out, numbers plain, enums by their names on the wire. */
public final class JsonWriter {

    private static final String LANGUAGE = "language";
    private static final FilterProvider UNFILTERED = new SimpleFilterProvider().setFailOnUnknownId(false);

    private final ObjectMapper mapper;
    private final Map<Language, ObjectWriter> writers = new ConcurrentHashMap<>();

    public JsonWriter() {
        SimpleModule module = new SimpleModule("answers");
        module.addSerializer(LocalDate.class, ToStringSerializer.instance);
        module.addSerializer(Enum.class, new EnumSerializer(null));
        module.addSerializer(Quantity.class, new QuantitySerializer());
        module.addSerializer(Message.class, new MessageSerializer());
        module.addSerializer(Double.class, new NoBinaryNumbers());
        module.addSerializer(Double.TYPE, new NoBinaryNumbers());
        this.mapper = JsonMapper.builder()
                .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
                .defaultPropertyInclusion(JsonInclude.Value.construct(JsonInclude.Include.NON_NULL,
                        JsonInclude.Include.NON_NULL))
                .addModule(module)
                .addMixIn(Record.class, PartFilter.Filtered.class)
                .filterProvider(UNFILTERED)
                .build();
    }

    /** An answer that says nothing to people. */
    public byte[] write(Object answer) {
        return write(answer, Language.ENGLISH);
    }

    /** An answer, with its texts in the language of the reader. */
    public byte[] write(Object answer, Language language) {
        try {
            return writers.computeIfAbsent(language, this::writer).writeValueAsBytes(answer);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the answer cannot be written", e);
        }
    }

    /** The parts of an answer that are wanted, with its texts in the language of the reader. */
    public byte[] write(Object answer, Language language, AnswerParts parts) {
        if (parts.isAll()) {
            return write(answer, language);
        }
        try {
            return writers.computeIfAbsent(language, this::writer).with(new PartFilter(parts.wanted())).writeValueAsBytes(answer);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the answer cannot be written", e);
        }
    }

    private ObjectWriter writer(Language language) {
        return mapper.writer().withAttribute(LANGUAGE, new Spoken(language));
    }

    /** Names are escaped and encoded once. A property of an enum has a serializer that knows its names. */
    @SuppressWarnings("rawtypes")
    private static final class EnumSerializer extends JsonSerializer<Enum> implements ContextualSerializer {

        private static final ClassValue<SerializableString[]> NAMES = new ClassValue<>() {
            @Override
            protected SerializableString[] computeValue(Class<?> enumeration) {
                return WireNames.all(enumeration).stream().map(SerializedString::new).toArray(SerializableString[]::new);
            }
        };

        /** Null where the enum is that of each value. */
        private final SerializableString[] names;

        EnumSerializer(SerializableString[] names) {
            this.names = names;
        }

        @Override
        public JsonSerializer<?> createContextual(SerializerProvider provider, BeanProperty property) {
            return property == null || !property.getType().isEnumType() ? this
                    : new EnumSerializer(NAMES.get(property.getType().getRawClass()));
        }

        @Override
        public void serialize(Enum value, JsonGenerator generator, SerializerProvider provider) throws IOException {
            generator.writeString(names == null ? name(value) : names[value.ordinal()]);
        }

        static SerializableString name(Enum value) {
            return NAMES.get(value.getDeclaringClass())[value.ordinal()];
        }
    }

    /** Most of an answer is quantities; as any other record they would be read by reflection and filtered property by property. */
    @SuppressWarnings("rawtypes")
    private static final class QuantitySerializer extends JsonSerializer<Quantity> {

        private static final SerializableString VALUE = new SerializedString("value");
        private static final SerializableString UNIT = new SerializedString("unit");

        @Override
        public void serialize(Quantity quantity, JsonGenerator generator, SerializerProvider provider) throws IOException {
            generator.writeStartObject();
            if (PartFilter.wants(VALUE, provider)) {
                generator.writeFieldName(VALUE);
                generator.writeNumber(quantity.value());
            }
            if (PartFilter.wants(UNIT, provider)) {
                generator.writeFieldName(UNIT);
                generator.writeString(EnumSerializer.name(quantity.unit()));
            }
            generator.writeEndObject();
        }
    }

    /** A language, and what does not depend on values in it, escaped and encoded once. */
    private record Spoken(Language language, Map<String, SerializableString> constants) {

        Spoken(Language language) {
            this(language, new ConcurrentHashMap<>());
        }

        void write(Message message, JsonGenerator generator) throws IOException {
            String constant = message.constantKey();
            if (constant == null) {
                generator.writeString(message.in(language));
            } else {
                generator.writeString(constants.computeIfAbsent(constant, one -> new SerializedString(message.in(language))));
            }
        }
    }

    private static final class MessageSerializer extends JsonSerializer<Message> {

        @Override
        public void serialize(Message value, JsonGenerator generator, SerializerProvider provider) throws IOException {
            ((Spoken) provider.getAttribute(LANGUAGE)).write(value, generator);
        }
    }

    /** A double in an answer was never rounded, and could be NaN: an internal error. */
    private static final class NoBinaryNumbers extends JsonSerializer<Double> {

        @Override
        public void serialize(Double value, JsonGenerator generator, SerializerProvider provider) {
            throw new IllegalStateException("an answer contains a binary number that was not rounded");
        }
    }
}
