package dev.brinebook.operation.cycle;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.RinseGuide;
import java.math.BigDecimal;

@About("The water of a rinse, beside what a manual for plants has.")
public record RinseLine(
        @Property("Water of the rinse.") VolumeQuantity volume,
        @Property(value = "The same in bed volumes.", min = 0, example = "1") BigDecimal bedVolumes,
        @Property(value = "Fewest bed volumes that plants take.", min = 0, example = "1") BigDecimal plantMinBedVolumes,
        @Property(value = "Most bed volumes that plants take.", min = 0, example = "3") BigDecimal plantMaxBedVolumes,
        @Property(value = "Whether it lies between. A household's fast rinse of three bed volumes lies below.",
                example = "true") Boolean withinPlantBand) {

    static RinseLine of(double bedVolumes, double resinLitres, RinseGuide guide, AnswerUnits units) {
        return new RinseLine(units.volume(bedVolumes * resinLitres), Rounding.answer(bedVolumes),
                Rounding.answer(guide.minBedVolumes()), Rounding.answer(guide.maxBedVolumes()), guide.includes(bedVolumes));
    }
}
