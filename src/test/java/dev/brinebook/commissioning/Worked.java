// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.commissioning;

import dev.brinebook.field.BrineTankShape;
import dev.brinebook.quantity.FlowUnit;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.LengthUnit;
import dev.brinebook.quantity.MassUnit;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.Softener;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The worked case: a 10 × 54 in tank with 1.5 ft³, 9 lb of salt, 10 °C, known flows. */
final class Worked {

    static final double CELSIUS = 10;
    static final double RAW_MG_PER_L = HardnessUnit.GPG.toBase(20);
    static final double DROP_MG_PER_L = HardnessUnit.GPG.toBase(1);
    static final double SALT_GRAMS = 1000 * MassUnit.POUND.toBase(9);
    static final double REFILL_MINUTES = 6;

    private Worked() {
    }

    static Softener softener() {
        return new Softener(new ResinBed(VolumeUnit.CUBIC_FOOT.toBase(1.5), LengthUnit.INCH.toBase(10)), LengthUnit.INCH.toBase(54),
                Salt.SODIUM_CHLORIDE, CapacityTable.WORKING, new CycleFlows(gpm(3), gpm(0.35), gpm(0.8), OptionalDouble.empty(),
                gpm(0.5)));
    }

    static FirstRegeneration regeneration() {
        Softener softener = softener();
        Cycle cycle = softener.cycleDesign(SALT_GRAMS / softener.bed().resinLitres(), CELSIUS).cycle()
                .retimed(Map.of(CycleStep.Kind.REFILL, REFILL_MINUTES));
        return new FirstRegeneration(softener, cycle, CELSIUS, Optional.of(new FirstRegeneration.BrineTank(BrineTankShape.ROUND,
                LengthUnit.INCH.toBase(18), 0.42)));
    }

    static CommissioningBands bands() {
        return new CommissioningBands(regeneration(), DROP_MG_PER_L);
    }

    private static OptionalDouble gpm(double flow) {
        return OptionalDouble.of(FlowUnit.GPM.toBase(flow));
    }
}
