// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.field.Witnesses;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.Unit;
import java.math.BigDecimal;

@SchemaDescription("Several answers to one question together.")
public record CombinedValue(
        @Basis(formula = "formula.field.weightedMean", source = "GUM")
        @Property(value = "Their mean by their uncertainty.", optional = "if they contradict each other") MeasuredValue mean,
        @Basis(formula = "formula.field.chiSquare", source = "GUM")
        @Property(value = "Sum of squared deviations from the mean in standard uncertainties, of all of them.", min = 0, example = "0.48")
        BigDecimal chiSquare,
        @Basis(formula = "formula.field.chiSquare", source = "GUM")
        @Property(value = "Probability of such a sum by chance. Below 0.05 they contradict each other.", min = 0, max = 1,
                example = "0.79") BigDecimal probability,
        @Property(value = "Whether all of them agree.", example = "true") Boolean agree,
        @Property(value = "The one that was left out, as the others agree without it.", optional = "if none was",
                example = "\"byBooks\"") Witness leftOut) {

    static CombinedValue of(Witnesses witnesses, Unit unit) {
        return new CombinedValue(MeasuredValue.orNull(witnesses.mean(), unit), Rounding.answer(witnesses.combination().chiSquare()),
                Rounding.answer(witnesses.combination().probability()), witnesses.combination().agrees(),
                witnesses.leftOut().map(Witness::of).orElse(null));
    }
}
