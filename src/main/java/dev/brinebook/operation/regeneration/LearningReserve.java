package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.regeneration.PolicyTotals;
import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.wording.Message;

@About("A reserve that the controller multiplies by the level of use of the last weeks.")
public record LearningReserve(
        @Property("The smallest that keeps to the service standard, at the mean level of use.") VolumeQuantity reserveAtMeanUse,
        @Property("What is to be expected of a year with it, once it has learned.") PolicyTotals year,
        @Property(value = "What it is good for.", example = "\"It keeps its promise when the home changes.\"") Message sentence) {
}
