// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.water.report.MetalForm;
import dev.brinebook.water.report.Parameter;
import dev.brinebook.water.report.Sample;
import java.util.OptionalDouble;

@SchemaDescription("How iron and manganese are present. Only what is dissolved goes on the resin.")
public record MetalFormsAnswer(
        @Property("The form of the iron.") MetalForm iron,
        @Property(value = "Dissolved iron.", optional = "when nothing says it") ConcentrationQuantity dissolvedIron,
        @Property("The form of the manganese.") MetalForm manganese,
        @Property(value = "Dissolved manganese.", optional = "when nothing says it") ConcentrationQuantity dissolvedManganese) {

    static MetalFormsAnswer of(Sample sample, MetalForm seen, AnswerUnits units) {
        MetalForm iron = seen.with(sample.value(Parameter.IRON), sample.value(Parameter.IRON_DISSOLVED));
        MetalForm manganese = seen.with(sample.value(Parameter.MANGANESE), sample.value(Parameter.MANGANESE_DISSOLVED));
        return new MetalFormsAnswer(iron, shown(iron.dissolvedMgPerL(sample.value(Parameter.IRON),
                sample.value(Parameter.IRON_DISSOLVED)), units), manganese, shown(manganese.dissolvedMgPerL(
                        sample.value(Parameter.MANGANESE), sample.value(Parameter.MANGANESE_DISSOLVED)), units));
    }

    private static ConcentrationQuantity shown(OptionalDouble mgPerL, AnswerUnits units) {
        return mgPerL.isPresent() ? units.concentration(mgPerL.getAsDouble()) : null;
    }
}
