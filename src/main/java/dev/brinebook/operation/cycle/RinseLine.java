// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.cycle;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.RinseGuide;
import java.math.BigDecimal;

@SchemaDescription("Water of a rinse, with the values of a manual for plants.")
public record RinseLine(
        @Property("Water of the rinse.") VolumeQuantity volume,
        @Property(value = "The same in bed volumes.", min = 0, example = "1") BigDecimal bedVolumes,
        @Property(value = "Lower end of the bed volumes used by plants.", min = 0, example = "1") BigDecimal plantMinBedVolumes,
        @Property(value = "Upper end of the bed volumes used by plants.", min = 0, example = "3") BigDecimal plantMaxBedVolumes,
        @Property(value = "Whether it is in that range. A household fast rinse of three bed volumes is below it.",
                example = "true") Boolean withinPlantBand) {

    static RinseLine of(double bedVolumes, double resinLitres, RinseGuide guide, AnswerUnits units) {
        return new RinseLine(units.volume(bedVolumes * resinLitres), Rounding.answer(bedVolumes),
                Rounding.answer(guide.minBedVolumes()), Rounding.answer(guide.maxBedVolumes()), guide.includes(bedVolumes));
    }
}
