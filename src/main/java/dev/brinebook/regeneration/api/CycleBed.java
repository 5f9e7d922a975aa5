package dev.brinebook.regeneration.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.AreaQuantity;
import dev.brinebook.quantity.api.LengthQuantity;
import dev.brinebook.quantity.api.VolumeQuantity;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.resin.ResinBed;
import java.math.BigDecimal;

@About("The resin in its tank, and the room above it.")
public record CycleBed(
        @Property("Resin, settled.") VolumeQuantity resinVolume,
        @Property("Depth of the settled resin.") LengthQuantity depth,
        @Property("Cross-section of the tank.") AreaQuantity area,
        @Property(value = "Room above the settled resin as a share of its depth.", min = 0, example = "0.85")
        BigDecimal freeboardShare,
        @Property(value = "Whether that is at least the 0.5 that the guide asks for.", example = "true")
        Boolean freeboardWithinGuide,
        @Property(value = "Whether the resin, lifted by the backwash, stays in the tank.", example = "true")
        Boolean roomForBackwash) {

    static CycleBed of(ResinBed bed, BackwashEffect backwash, AnswerUnits units) {
        return new CycleBed(units.resinVolume(bed.resinLitres()), units.length(bed.depthMetres()),
                units.area(bed.areaSquareMetres()), Rounding.answer(backwash.freeboardShare()),
                backwash.hasGuideFreeboard(), !backwash.losesResin());
    }
}
