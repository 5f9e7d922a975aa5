package dev.brinebook.operation.resin;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.resin.ServiceFlow;

@About("A limit of the flow.")
public record BedBound(
        @Property(value = "What sets it: 8 gpm per square foot of tank, 5 gpm per cubic foot of resin all day, 10 in short"
                + " peaks, or 15 psi lost in the bed.", example = "\"surfaceVelocity\"") ServiceFlow.Limit limit,
        @Property("The most flow by it, with the bed clean.") FlowQuantity flow,
        @Property("The same with crushed beads.") FlowQuantity crushedFlow) {
}
