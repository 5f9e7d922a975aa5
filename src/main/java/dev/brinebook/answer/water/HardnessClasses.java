package dev.brinebook.answer.water;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.water.HardnessClass;

@About("The words for a hardness on three scales, which disagree.")
public record HardnessClasses(
        @Property("By the US Geological Survey: soft to 60, moderately hard to 120, hard to 180 mg/L, then very hard.")
        HardnessClass usgs,
        @Property("By the German detergents act: soft below 1.5, medium to 2.5 mmol/L, then hard.") HardnessClass german,
        @Property("By the US trade: soft to 1, slightly hard to 3.5, moderately hard to 7, hard to 10.5 gpg, then very"
                + " hard.") HardnessClass trade) {

    /** The words for {@code hardnessMgPerL}. */
    public static HardnessClasses of(double hardnessMgPerL) {
        return new HardnessClasses(HardnessClass.usgs(hardnessMgPerL), HardnessClass.german(hardnessMgPerL),
                HardnessClass.trade(hardnessMgPerL));
    }
}
