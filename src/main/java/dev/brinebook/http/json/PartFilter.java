// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.json;

import com.fasterxml.jackson.annotation.JsonFilter;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.BeanPropertyFilter;
import com.fasterxml.jackson.databind.ser.BeanPropertyWriter;
import com.fasterxml.jackson.databind.ser.FilterProvider;
import com.fasterxml.jackson.databind.ser.PropertyFilter;
import com.fasterxml.jackson.databind.ser.PropertyWriter;
import com.fasterxml.jackson.databind.ser.impl.SimpleBeanPropertyFilter;
import dev.brinebook.api.AnswerPart;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.caution.Severity;
import java.util.List;

/**
 * Leaves out what is not wanted of one answer, before anything is done for it. What is wanted whole passes no filter. It knows where in
 * the answer the writer is, so that each answer needs one of its own.
 */
final class PartFilter extends FilterProvider {

    private static final String ID = "parts";

    private final PropertyFilter filter = new OfProperties();
    private AnswerPart here;

    /** A filter of an answer of which {@code wanted} is written. */
    PartFilter(AnswerPart wanted) {
        here = wanted;
    }

    /** Has every record written through this filter, where a writer has it. */
    @JsonFilter(ID)
    interface Filtered {
    }

    /** Whether a property is wanted of the record that a writer is at. */
    static boolean wants(SerializableString property, SerializerProvider writing) {
        return !(writing.getFilterProvider() instanceof PartFilter parts) || parts.here.at(property.getValue()) != null;
    }

    @Override
    @SuppressWarnings("deprecation") // the older form of the next, which must be there and is not asked
    public BeanPropertyFilter findFilter(Object id) {
        throw new UnsupportedOperationException();
    }

    @Override
    public PropertyFilter findPropertyFilter(Object id, Object owner) {
        return here.isWhole() ? null : filter;
    }

    private final class OfProperties extends SimpleBeanPropertyFilter {

        @Override
        public void serializeAsField(Object owner, JsonGenerator generator, SerializerProvider provider, PropertyWriter writer)
                throws Exception {
            AnswerPart outer = here;
            AnswerPart below = outer.at(writer.getName());
            if (below == null) {
                return;
            }
            here = below;
            if (below.isSeriousCautions() && writer instanceof BeanPropertyWriter property && property.get(owner) instanceof List<?> all) {
                generator.writeFieldName(writer.getName());
                provider.defaultSerializeValue(all.stream().filter(OfProperties::isSerious).toList(), generator);
            } else {
                writer.serializeAsField(owner, generator, provider);
            }
            here = outer;
        }

        private static boolean isSerious(Object caution) {
            return ((CautionAnswer) caution).severity() != Severity.INFO;
        }
    }
}
