// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.cycle;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.AreaQuantity;
import dev.brinebook.api.quantity.LengthQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("The resin in its tank, and the freeboard.")
public record CycleBed(
        @Basis
        @Property("Volume of the settled resin.") VolumeQuantity resinVolume,
        @From({"resinVolume", "area"})
        @Property("Depth of the settled resin.") LengthQuantity depth,
        @Property(value = "Whether the depth is at least the guide minimum of 24 inches.", example = "true")
        Boolean depthWithinGuide,
        @Basis(formula = "formula.regeneration.areaCircleTankDiameter", source = "CP-HYDRAULICS")
        @Property("Cross-section of the tank.") AreaQuantity area,
        @Basis(formula = "formula.regeneration.tankHeightBedDepth", source = "CP-HYDRAULICS")
        @From("depth")
        @Property(value = "Freeboard, as a share of the depth of the settled resin.", min = 0, example = "0.85")
        BigDecimal freeboardShare,
        @Property(value = "Whether the freeboard is at least the guide minimum of 0.5.", example = "true")
        Boolean freeboardWithinGuide,
        @Property(value = "Whether the backwash keeps the resin in the tank.", example = "true")
        Boolean roomForBackwash) {

    /** The bed in the units of the answer, with the room that {@code backwash} has. */
    public static CycleBed of(ResinBed bed, BackwashEffect backwash, AnswerUnits units) {
        return new CycleBed(units.resinVolume(bed.resinLitres()), units.length(bed.depthMetres()),
                bed.hasGuideDepth(), units.area(bed.areaSquareMetres()), Rounding.answer(backwash.freeboardShare()),
                backwash.hasGuideFreeboard(), !backwash.losesResin());
    }

    /** Says why the bed is as deep as it is. */
    public static void explain(AnswerUnits units, Explanation explanation) {
        explanation.because("/bed/depth", Message.of("formula.regeneration.resinVolumeCrossSection",
                Text.of(units.length(ResinBed.GUIDE_MIN_DEPTH_METRES))), "CP-HYDRAULICS");
    }
}
