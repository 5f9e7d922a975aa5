package dev.brinebook.answer.cycle;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.AreaQuantity;
import dev.brinebook.api.quantity.LengthQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("The resin in its tank, and the room above it.")
public record CycleBed(
        @Property("Resin, settled.") VolumeQuantity resinVolume,
        @Property("Depth of the settled resin.") LengthQuantity depth,
        @Property(value = "Whether that is at least the 24 inches that the guide asks for.", example = "true")
        Boolean depthWithinGuide,
        @Property("Cross-section of the tank.") AreaQuantity area,
        @Property(value = "Room above the settled resin as a share of its depth.", min = 0, example = "0.85")
        BigDecimal freeboardShare,
        @Property(value = "Whether that is at least the 0.5 that the guide asks for.", example = "true")
        Boolean freeboardWithinGuide,
        @Property(value = "Whether the resin, lifted by the backwash, stays in the tank.", example = "true")
        Boolean roomForBackwash) {

    /** The bed in the units of the answer, with the room that {@code backwash} has. */
    public static CycleBed of(ResinBed bed, BackwashEffect backwash, AnswerUnits units) {
        return new CycleBed(units.resinVolume(bed.resinLitres()), units.length(bed.depthMetres()),
                bed.hasGuideDepth(), units.area(bed.areaSquareMetres()), Rounding.answer(backwash.freeboardShare()),
                backwash.hasGuideFreeboard(), !backwash.losesResin());
    }

    /** Says why the numbers of the bed are what they are. */
    public static void explain(AnswerUnits units, Explanation explanation) {
        explanation.given("/bed/resinVolume");
        explanation.because("/bed/depth", Message.of("resin volume over the cross-section of the tank; at least {0} are asked"
                + " for", Text.of(units.length(ResinBed.GUIDE_MIN_DEPTH_METRES))), "CP-HYDRAULICS");
        explanation.because("/bed/area", Message.of("circle of the diameter of the tank"), "CP-HYDRAULICS");
        explanation.because("/bed/freeboardShare", Message.of("tank height less bed depth, over bed depth; at least half is"
                + " asked for"), "CP-HYDRAULICS");
    }
}
