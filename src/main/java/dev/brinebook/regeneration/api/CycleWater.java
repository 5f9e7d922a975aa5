package dev.brinebook.regeneration.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.VolumeQuantity;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.regeneration.RinseGuide;
import dev.brinebook.regeneration.WaterGuide;
import dev.brinebook.resin.ResinBed;
import java.math.BigDecimal;

@About("The water of the regeneration by the resin that it serves.")
public record CycleWater(
        @Property("The slow rinse, which displaces the brine.") RinseLine slowRinse,
        @Property("The fast rinse, which clears the last of it.") RinseLine fastRinse,
        @Property("Water of the whole regeneration for one cubic foot (one litre in metric units) of resin.")
        VolumeQuantity perVolumeOfResin,
        @Property(value = "The same in bed volumes.", min = 0, example = "8.66") BigDecimal bedVolumes,
        @Property(value = "Whether that lies in the 25 to 65 gal that are usual for a cubic foot of a household's resin, 3.3"
                + " to 8.7 bed volumes.", example = "true") Boolean withinUsual,
        @Property(value = "Whether it is less than the 80 gal for a cubic foot, 10.7 bed volumes, of public plants.",
                example = "true") Boolean belowPlants) {

    static CycleWater of(ResinBed bed, Cycle cycle, AnswerUnits units) {
        double bedVolumes = cycle.waterLitres() / bed.resinLitres();
        double fastRinse = cycle.step(Kind.FAST_RINSE).lineWaterLitres() / bed.resinLitres();
        return new CycleWater(RinseLine.of(cycle.slowRinseBedVolumes(), bed.resinLitres(), RinseGuide.SLOW, units),
                RinseLine.of(fastRinse, bed.resinLitres(), RinseGuide.FAST, units),
                units.volume(bedVolumes * units.resinVolume(1).unit().toBase(1)), Rounding.answer(bedVolumes),
                WaterGuide.isUsual(bedVolumes), bedVolumes < WaterGuide.PLANT_BED_VOLUMES);
    }

    static void explain(Explanation explanation) {
        explanation.because("/waterByResin/slowRinse", "minutes after the brine times the brine flow; plants take 7.5 to 22.5"
                + " gal per cubic foot, one to three bed volumes", "UFC-3-240-13FN");
        explanation.because("/waterByResin/fastRinse", "minutes times flow; plants take 35 to 100 gal per cubic foot",
                "UFC-3-240-13FN");
        explanation.because("/waterByResin/perVolumeOfResin", "water of the regeneration over the resin; 25 to 65 gal per"
                + " cubic foot are usual", "CP-CYCLE");
        explanation.because("/waterByResin/belowPlants", "80 gal per cubic foot", "AWWA-ASCE");
    }
}
