// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.resin.Packing;
import dev.brinebook.resin.ResinBead;
import java.math.BigDecimal;

@SchemaDescription("The beads, and the effect of crushed beads on the bed.")
public record BedBeads(
        @Basis(formula = "formula.resin.gelCationResinUnless", source = "CP-RESIN-BEAD")
        @Property(value = "Mean diameter of the bead.", min = 0, example = "0.62", unit = "mm")
        BigDecimal diameterMillimetres,
        @Basis(formula = "formula.resin.gelCationResinUnless", source = "CP-RESIN-BEAD")
        @Property(value = "Voids of the clean bed.", min = 0, max = 100, example = "38", unit = "%") BigDecimal voidPercent,
        @Basis(formula = "formula.resin.gelCationResinUnless", source = "CP-RESIN-BEAD")
        @Property(value = "Density of the swollen bead.", min = 0, example = "1280", unit = "kg/m3")
        BigDecimal wetDensityKilogramsPerCubicMetre,
        @Basis
        @Property(value = "Share of crushed beads, by volume.", min = 0, max = 50, example = "20",
                unit = "%") BigDecimal crushedPercent,
        @Basis(formula = "formula.resin.of1SumShareDiameter", source = "ERGUN-1952")
        @Property(value = "Mean diameter of beads and fragments, by surface per volume.", min = 0, example = "0.516667",
                unit = "mm") BigDecimal crushedDiameterMillimetres,
        @Basis(formula = "formula.resin.voidsCleanBedVoids", source = "CP-RESIN-BEAD")
        @Property(value = "Voids of the bed with crushed beads.", min = 0, max = 100, example = "35", unit = "%")
        BigDecimal crushedVoidPercent) {

    static BedBeads of(ResinBead bead, double crushedShare) {
        Packing crushed = Packing.of(bead, crushedShare);
        return new BedBeads(Rounding.answer(bead.diameterMillimetres()), Rounding.answer(100 * bead.voidShare()),
                Rounding.answer(bead.wetDensityKilogramsPerCubicMetre()), Rounding.answer(100 * crushedShare),
                Rounding.answer(crushed.diameterMillimetres()), Rounding.answer(100 * crushed.voidShare()));
    }
}
