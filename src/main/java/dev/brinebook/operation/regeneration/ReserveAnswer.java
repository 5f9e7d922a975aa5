package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.wording.Message;
import java.util.List;

@About("Rules for the reserve of a delayed meter, side by side, and the smallest that is enough.")
public record ReserveAnswer(
        @Property(value = "One sentence to quote.", example = "\"Keep 220 gal back.\"") Message summary,
        @Property("Hardness once iron and manganese count.") HardnessLines hardness,
        @Property("Mean softened use of a day at home.") VolumeQuantity dailyUse,
        @Property("Capacity that a regeneration restores.") CapacityQuantity capacity,
        @Property("What the meter counts down from.") VolumeQuantity meterVolume,
        @Property("The smallest reserve that is enough.") SmallestReserveAnswer smallest,
        @Property(value = "A reserve that follows the level of use, where the controller can have one.", optional = "when no reserve is"
                + " enough") LearningReserve learning,
        @Property("The rules, in the order asked.") List<TriedReserve> rules,
        @Property("What to be careful about.") List<CautionAnswer> cautions,
        @Property("Values that were taken.") List<AssumptionAnswer> assumptions,
        @Property("Why each number is what it is.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
