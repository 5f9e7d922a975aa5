package dev.brinebook.answer.softener;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.RunningCost;
import java.util.List;

@About("Settings that keep to the same standard and cost within 2 % of the least: as good, as far as anybody knows.")
public record EqualCostBand(
        @Property("Lowest such salt dose, with its own reserve.") SaltDoseQuantity leastSaltDose,
        @Property("Highest such salt dose, with its own reserve.") SaltDoseQuantity mostSaltDose,
        @Property("The smallest reserve at the dose chosen.") VolumeQuantity leastReserve,
        @Property("The largest such reserve at the dose chosen.") VolumeQuantity mostReserve) {

    static EqualCostBand of(DoseChoice choice, Duty duty, RunningCost cost, AnswerUnits units) {
        List<DoseChoice.Option> band = choice.band(duty);
        var settings = choice.best().settings();
        return new EqualCostBand(units.saltDose(band.get(0).dosed().saltDoseGramsPerLitre()),
                units.saltDose(band.get(band.size() - 1).dosed().saltDoseGramsPerLitre()),
                units.volume(Math.min(settings.reserveLitres(), settings.meterLitres())),
                units.volume(choice.largestReserveLitres(duty, cost)));
    }
}
