// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.water;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.caution.Caution;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.water.Hardness;
import dev.brinebook.water.WaterCautions;

/** A part of a request that gives hardness, either directly or by calcium and magnesium. */
public interface HardnessSource {

    HardnessQuantity hardness();

    ConcentrationQuantity calcium();

    ConcentrationQuantity magnesium();

    /** Hardness in mg/L as CaCO3. */
    default double hardnessMgPerL() {
        return hardness() != null ? hardness().inBase()
                : Hardness.fromIonsMgPerL(calcium().inBase(), magnesium().inBase());
    }

    /** Asks for the unit of a hardness that is given in another unit than mg/L and that few waters reach. */
    default void questionHighHardness(Explanation explanation) {
        if (hardness() != null && hardness().unit() != HardnessUnit.MG_PER_L && WaterCautions.isMaybeMgPerL(hardnessMgPerL())) {
            explanation.caution(Caution.HARDNESS_MAYBE_MG_PER_L);
        }
    }
}
