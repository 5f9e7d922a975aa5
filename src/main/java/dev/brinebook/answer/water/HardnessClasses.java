// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.water.HardnessClass;

@SchemaDescription("Class of the hardness on three scales, which differ from each other.")
public record HardnessClasses(
        @Property("US Geological Survey: soft to 60, moderately hard to 120, hard to 180 mg/L, then very hard.")
        HardnessClass usgs,
        @Property("German detergents act: soft below 1.5, medium to 2.5 mmol/L, then hard.") HardnessClass german,
        @Property("US trade: soft to 1, slightly hard to 3.5, moderately hard to 7, hard to 10.5 gpg, then very "
                + "hard.") HardnessClass trade) {

    /** The words for {@code hardnessMgPerL}. */
    public static HardnessClasses of(double hardnessMgPerL) {
        return new HardnessClasses(HardnessClass.usgs(hardnessMgPerL), HardnessClass.german(hardnessMgPerL),
                HardnessClass.trade(hardnessMgPerL));
    }
}
