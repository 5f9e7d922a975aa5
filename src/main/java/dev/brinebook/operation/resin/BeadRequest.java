// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.LengthQuantity;
import dev.brinebook.resin.ResinBead;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("The resin bead. Omitted values default to those of gel cation resin.")
public record BeadRequest(
        @Property(value = "Mean diameter of the swollen bead.", min = ResinBead.MIN_DIAMETER_MILLIMETRES,
                max = ResinBead.MAX_DIAMETER_MILLIMETRES, unit = "mm", fallback = "0.62 mm") LengthQuantity diameter,
        @Property(value = "Void volume of the settled, clean bed, as a share of the bed.",
                min = BeadRequest.MIN_VOID_PERCENT, max = BeadRequest.MAX_VOID_PERCENT, unit = "%", example = "38",
                fallback = "38 %") BigDecimal voidPercent,
        @Property(value = "Density of the swollen bead.", min = ResinBead.MIN_WET_DENSITY_KILOGRAMS_PER_CUBIC_METRE,
                max = ResinBead.MAX_WET_DENSITY_KILOGRAMS_PER_CUBIC_METRE, unit = "kg/m3", example = "1280",
                fallback = "1280 kg/m3") BigDecimal wetDensityKilogramsPerCubicMetre) {

    static final double MIN_VOID_PERCENT = 100 * ResinBead.MIN_VOID_SHARE;
    static final double MAX_VOID_PERCENT = 100 * ResinBead.MAX_VOID_SHARE;

    /** The bead that {@code given} makes, with every default recorded in {@code explanation}. */
    static ResinBead toDomain(BeadRequest given, Explanation explanation) {
        BeadRequest bead = given == null ? new BeadRequest(null, null, null) : given;
        ResinBead gel = ResinBead.DEFAULT;
        return new ResinBead(1000 * explanation.orDefault("bead.diameter", bead.diameter(),
                gel.diameterMillimetres() / 1000, Text.measure(Text.number(gel.diameterMillimetres()), "mm")),
                explanation.orDefault("bead.voidPercent", bead.voidPercent(), 100 * gel.voidShare(),
                        percent -> Message.of("pattern.percent", percent)) / 100,
                explanation.orDefault("bead.wetDensityKilogramsPerCubicMetre", bead.wetDensityKilogramsPerCubicMetre(),
                        gel.wetDensityKilogramsPerCubicMetre(), density -> Text.measure(density, "kg/m3")));
    }
}
