package dev.brinebook.operation.cycle;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.regeneration.RinseGuide;
import dev.brinebook.regeneration.WaterGuide;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.wording.Message;
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
                perVolumeOfResin(bedVolumes, units), Rounding.answer(bedVolumes),
                WaterGuide.isUsual(bedVolumes), bedVolumes < WaterGuide.PLANT_BED_VOLUMES);
    }

    static void explain(AnswerUnits units, Explanation explanation) {
        explanation.because("/waterByResin/slowRinse", Message.of("minutes after the brine times the brine flow; plants take"
                + " one to three bed volumes"), "UFC-3-240-13FN");
        explanation.because("/waterByResin/fastRinse", Message.of("minutes times flow; plants take 4.7 to 13.3 bed volumes"),
                "UFC-3-240-13FN");
        explanation.because("/waterByResin/perVolumeOfResin", Message.of("water of the regeneration over the resin; {0} are"
                + " usual", Text.span(perVolumeOfResin(WaterGuide.MIN_BED_VOLUMES, units),
                perVolumeOfResin(WaterGuide.MAX_BED_VOLUMES, units))), "CP-CYCLE");
        explanation.because("/waterByResin/bedVolumes", Message.of("water of the regeneration over the resin volume"),
                "CP-CYCLE");
        explanation.because("/waterByResin/belowPlants", Message.of("{0} for as much resin",
                Text.of(perVolumeOfResin(WaterGuide.PLANT_BED_VOLUMES, units))), "AWWA-ASCE");
    }

    /** Water of so many bed volumes for one cubic foot, or one litre, of resin. */
    private static VolumeQuantity perVolumeOfResin(double bedVolumes, AnswerUnits units) {
        return units.volume(bedVolumes * units.resinVolume(1).unit().toBase(1));
    }
}
