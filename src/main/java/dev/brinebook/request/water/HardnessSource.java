// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.water;

import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.water.Hardness;

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
}
