// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.softener;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.RunningCost;
import java.util.List;

@SchemaDescription("Settings that meet the same standard and cost within 2 % of the cheapest. In practice they are equally good.")
public record EqualCostBand(
        @Property("Lowest such salt dose, with its own reserve.") SaltDoseQuantity leastSaltDose,
        @Property("Highest such salt dose, with its own reserve.") SaltDoseQuantity mostSaltDose,
        @Property("Smallest such reserve at the chosen dose.") VolumeQuantity leastReserve,
        @Property("Largest such reserve at the chosen dose.") VolumeQuantity mostReserve) {

    static EqualCostBand of(DoseChoice choice, DesignConditions duty, RunningCost cost, AnswerUnits units) {
        List<DoseChoice.Option> band = choice.band(duty);
        var settings = choice.best().settings();
        return new EqualCostBand(units.saltDose(band.get(0).dosed().saltDoseGramsPerLitre()),
                units.saltDose(band.get(band.size() - 1).dosed().saltDoseGramsPerLitre()),
                units.volume(Math.min(settings.reserveLitres(), settings.meterLitres())),
                units.volume(choice.largestReserveLitres(duty, cost)));
    }
}
