// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.cycle;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.regeneration.RinseGuide;
import dev.brinebook.regeneration.WaterGuide;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("Regeneration water per resin volume.")
public record CycleWater(
        @Basis(formula = "formula.regeneration.minutesAfterBrineBrine", source = "UFC-3-240-13FN")
        @Property("The slow rinse, which displaces the brine.") RinseLine slowRinse,
        @Basis(formula = "formula.regeneration.minutesFlowPlantsUse", source = "UFC-3-240-13FN")
        @Property("The fast rinse, which clears the last of it.") RinseLine fastRinse,
        @From({"/cycle/water", "/bed/resinVolume"})
        @Property("Regeneration water per cubic foot (per litre in metric units) of resin.")
        VolumeQuantity perVolumeOfResin,
        @Basis(formula = "formula.regeneration.waterPerRegenerationResinVolume", source = "CP-CYCLE")
        @From({"/cycle/water", "/bed/resinVolume"})
        @Property(value = "The same in bed volumes.", min = 0, example = "8.66") BigDecimal bedVolumes,
        @Property(value = "Whether it is in the usual household range of 25 to 65 gal per cubic "
                + "foot of resin (3.3 to 8.7 bed volumes).", example = "true") Boolean withinUsual,
        @Property(value = "Whether it is less than the 80 gal per cubic foot (10.7 bed volumes) of public plants.",
                example = "true") Boolean belowPlants) {

    static CycleWater of(ResinBed bed, Cycle cycle, AnswerUnits units) {
        double bedVolumes = cycle.waterLitres() / bed.resinLitres();
        double fastRinse = cycle.step(Kind.FAST_RINSE).lineWaterLitres() / bed.resinLitres();
        return new CycleWater(RinseLine.of(cycle.slowRinseBedVolumes(), bed.resinLitres(), RinseGuide.SLOW, units),
                RinseLine.of(fastRinse, bed.resinLitres(), RinseGuide.FAST, units),
                perVolumeOfResin(bedVolumes, units), Rounding.answer(bedVolumes),
                WaterGuide.isUsual(bedVolumes), bedVolumes < WaterGuide.PLANT_BED_VOLUMES);
    }

    static void explain(AnswerUnits units, Explanation explanation) {
        explanation.because("/waterByResin/perVolumeOfResin", Message.of("formula.regeneration.waterPerRegenerationResin",
                Text.span(perVolumeOfResin(WaterGuide.MIN_BED_VOLUMES, units),
                perVolumeOfResin(WaterGuide.MAX_BED_VOLUMES, units))), "CP-CYCLE");
        explanation.because("/waterByResin/belowPlants", Message.of("formula.regeneration.sameVolumeResin",
                Text.of(perVolumeOfResin(WaterGuide.PLANT_BED_VOLUMES, units))), "AWWA-ASCE");
    }

    /** Water of a number of bed volumes for one cubic foot, or one litre, of resin. */
    private static VolumeQuantity perVolumeOfResin(double bedVolumes, AnswerUnits units) {
        return units.volume(bedVolumes * units.resinVolume(1).unit().toBase(1));
    }
}
