// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.json;

import com.fasterxml.jackson.annotation.JsonFilter;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.ser.BeanPropertyWriter;
import com.fasterxml.jackson.databind.ser.PropertyWriter;
import com.fasterxml.jackson.databind.ser.impl.SimpleBeanPropertyFilter;
import dev.brinebook.api.AnswerPart;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.caution.Severity;
import java.util.List;

/** Leaves out what is not wanted of an answer, before anything is done for it. */
final class PartFilter extends SimpleBeanPropertyFilter {

    static final String ID = "parts";

    /** Has every record written through this filter, where a writer has it. */
    @JsonFilter(ID)
    interface Filtered {
    }

    /** Where in the answer the writer is. */
    static final class Place {

        private AnswerPart part;

        Place(AnswerPart part) {
            this.part = part;
        }
    }

    @Override
    public void serializeAsField(Object owner, JsonGenerator generator, SerializerProvider provider, PropertyWriter writer)
            throws Exception {
        Place place = (Place) provider.getAttribute(ID);
        AnswerPart here = place.part;
        AnswerPart below = here.at(writer.getName());
        if (below == null) {
            return;
        }
        place.part = below;
        if (below.isSeriousCautions() && writer instanceof BeanPropertyWriter property && property.get(owner) instanceof List<?> all) {
            generator.writeFieldName(writer.getName());
            provider.defaultSerializeValue(all.stream().filter(PartFilter::isSerious).toList(), generator);
        } else {
            writer.serializeAsField(owner, generator, provider);
        }
        place.part = here;
    }

    private static boolean isSerious(Object caution) {
        return ((CautionAnswer) caution).severity() != Severity.INFO;
    }
}
