// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.resin;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.SaltEfficiencyQuantity;
import dev.brinebook.api.quantity.WaterPerCapacityQuantity;
import dev.brinebook.resin.EfficiencyLine;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("A published efficiency limit, and whether the softener meets it.")
public record EfficiencyLineAnswer(
        @Property(value = "Name of the limit.", example = "\"california2002\"") String line,
        @Basis(formula = "formula.softener.lineCaliforniaLawClock", source = "CA-HSC-116785")
        @Property("Whether it is met, not met, or not applicable to this control type. Whether the law requires it depends on the place "
                + "and on the installation date. californiaClock applies to appliances installed before 1980 in the areas that the law "
                + "names.")
        EfficiencyLine.Standing standing,
        @Property("Minimum salt efficiency required.") SaltEfficiencyQuantity leastSaltEfficiency,
        @Property(value = "Maximum regeneration water allowed.", optional = "when it sets no such limit")
        WaterPerCapacityQuantity mostWater,
        @Property("Criteria not met. Empty when the limit is met.") List<EfficiencyLine.Shortfall> missedBy) {

    /** Every line, with its source recorded below {@code pointer}. */
    public static List<EfficiencyLineAnswer> of(List<EfficiencyLine.Verdict> verdicts, AnswerUnits units, String pointer,
            Explanation explanation) {
        verdicts.stream().map(verdict -> verdict.line().sourceKey()).distinct().forEach(key ->
                explanation.because(pointer, Message.of("formula.softener.calculatedEfficiencyComparedPublished"), key));
        return verdicts.stream().map(verdict -> new EfficiencyLineAnswer(verdict.line().code(), verdict.standing(),
                units.saltEfficiency(verdict.line().minSaltEfficiencyGramsPerGram()),
                verdict.line().maxWaterLitresPerKilogram().isPresent()
                        ? units.waterPerCapacity(verdict.line().maxWaterLitresPerKilogram().getAsDouble()) : null,
                verdict.shortfalls())).toList();
    }
}
