// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.regeneration.Saving;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.model.Model;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("Difference between a policy and the first one, in the expected results per year. Negative if it uses less.")
public record PolicyComparison(
        @Property(value = "The policy.", example = "\"metered\"") Message name,
        @Property(value = "The first policy, which it is compared with.", example = "\"present settings\"") Message against,
        @Property(value = "Regenerations.", unit = "regenerations a year", example = "-30") BigDecimal regenerations,
        @Property("Salt.") MassQuantity salt,
        @Property("Regeneration water.") VolumeQuantity water,
        @Property(value = "Hard days: days on which hard water passes.", unit = "days a year", example = "1") BigDecimal hardDays) {

    static PolicyComparison of(Message name, YearlyTotals mine, Message against, YearlyTotals base, AnswerUnits units,
            Model model) {
        return new PolicyComparison(name, against, Rounding.answer(Saving.of(mine.regenerations(), base.regenerations(), model)),
                units.mass(Saving.of(mine.saltGrams(), base.saltGrams(), model) / 1000),
                units.volume(Saving.of(mine.waterLitres(), base.waterLitres(), model)),
                Rounding.toThousandth(mine.hardDays() - base.hardDays()));
    }
}
