// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.LengthQuantity;
import dev.brinebook.quantity.LengthUnit;
import dev.brinebook.resin.ResinBead;
import java.math.BigDecimal;

@SchemaDescription("The resin bead. Omitted values default to those of gel cation resin.")
public record BeadRequest(
        @Property(value = "Mean diameter of the swollen bead.", min = ResinBead.MIN_DIAMETER_MILLIMETRES,
                max = ResinBead.MAX_DIAMETER_MILLIMETRES, unit = "mm",
                byDefault = ResinBead.DEFAULT_DIAMETER_MILLIMETRES) LengthQuantity diameter,
        @Property(value = "Void volume of the settled, clean bed, as a share of the bed.",
                min = BeadRequest.MIN_VOID_PERCENT, max = BeadRequest.MAX_VOID_PERCENT, unit = "%", example = "38",
                byDefault = BeadRequest.DEFAULT_VOID_PERCENT) BigDecimal voidPercent,
        @Property(value = "Density of the swollen bead.", min = ResinBead.MIN_WET_DENSITY_KILOGRAMS_PER_CUBIC_METRE,
                max = ResinBead.MAX_WET_DENSITY_KILOGRAMS_PER_CUBIC_METRE, unit = "kg/m3", example = "1280",
                byDefault = ResinBead.DEFAULT_WET_DENSITY_KILOGRAMS_PER_CUBIC_METRE) BigDecimal wetDensityKilogramsPerCubicMetre) {

    static final double MIN_VOID_PERCENT = 100 * ResinBead.MIN_VOID_SHARE;
    static final double MAX_VOID_PERCENT = 100 * ResinBead.MAX_VOID_SHARE;
    static final double DEFAULT_VOID_PERCENT = 100 * ResinBead.DEFAULT_VOID_SHARE;
    private static final String SOURCE = "CP-RESIN-BEAD";

    /** The bead that {@code given} makes, with every default recorded in {@code explanation}. */
    static ResinBead toDomain(BeadRequest given, Explanation explanation) {
        BeadRequest bead = given == null ? new BeadRequest(null, null, null) : given;
        return new ResinBead(1000 * explanation.resolve(bead.diameter(), ResinBead.DEFAULT_DIAMETER_MILLIMETRES / 1000,
                Resolved.of("/bead/diameter", ResinBead.DEFAULT_DIAMETER_MILLIMETRES, LengthUnit.MILLIMETRE.symbol()).byDefault(SOURCE)),
                explanation.resolve(bead.voidPercent(), DEFAULT_VOID_PERCENT,
                        Resolved.of("/bead/voidPercent", DEFAULT_VOID_PERCENT, "%").byDefault(SOURCE)) / 100,
                explanation.resolve(bead.wetDensityKilogramsPerCubicMetre(), ResinBead.DEFAULT_WET_DENSITY_KILOGRAMS_PER_CUBIC_METRE,
                        Resolved.of("/bead/wetDensityKilogramsPerCubicMetre", ResinBead.DEFAULT_WET_DENSITY_KILOGRAMS_PER_CUBIC_METRE,
                                "kg/m3").byDefault(SOURCE)));
    }
}
