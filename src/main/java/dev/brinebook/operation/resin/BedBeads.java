// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.resin.Packing;
import dev.brinebook.resin.ResinBead;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("The beads, and the effect of crushed beads on the bed.")
public record BedBeads(
        @Property(value = "Mean diameter of the bead.", min = 0, example = "0.62", unit = "mm")
        BigDecimal diameterMillimetres,
        @Property(value = "Voids of the clean bed.", min = 0, max = 100, example = "38", unit = "%") BigDecimal voidPercent,
        @Property(value = "Density of the swollen bead.", min = 0, example = "1280", unit = "kg/m3")
        BigDecimal wetDensityKilogramsPerCubicMetre,
        @Property(value = "Share of crushed beads, by volume.", min = 0, max = 50, example = "20",
                unit = "%") BigDecimal crushedPercent,
        @Property(value = "Mean diameter of beads and fragments, by surface per volume.", min = 0, example = "0.516667",
                unit = "mm") BigDecimal crushedDiameterMillimetres,
        @Property(value = "Voids of the bed with crushed beads.", min = 0, max = 100, example = "35", unit = "%")
        BigDecimal crushedVoidPercent) {

    static BedBeads of(ResinBead bead, double crushedShare) {
        Packing crushed = Packing.of(bead, crushedShare);
        return new BedBeads(Rounding.answer(bead.diameterMillimetres()), Rounding.answer(100 * bead.voidShare()),
                Rounding.answer(bead.wetDensityKilogramsPerCubicMetre()), Rounding.answer(100 * crushedShare),
                Rounding.answer(crushed.diameterMillimetres()), Rounding.answer(100 * crushed.voidShare()));
    }

    static void explain(Explanation explanation) {
        explanation.given("/beads/crushedPercent");
        for (String bead : List.of("diameterMillimetres", "voidPercent", "wetDensityKilogramsPerCubicMetre")) {
            explanation.because("/beads/" + bead, Message.of("formula.resin.gelCationResinUnless",
                    Text.number(ResinBead.DEFAULT.diameterMillimetres()),
                    Text.number(100 * ResinBead.DEFAULT.voidShare()),
                    Text.number(ResinBead.DEFAULT.wetDensityKilogramsPerCubicMetre())), "CP-RESIN-BEAD");
        }
        explanation.because("/beads/crushedDiameterMillimetres", Message.of("formula.resin.of1SumShareDiameter"), "ERGUN-1952");
        explanation.because("/beads/crushedVoidPercent", Message.of("formula.resin.voidsCleanBedVoids"), "CP-RESIN-BEAD");
    }
}
