// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.resin.ServiceFlow;

@SchemaDescription("A flow limit.")
public record BedBound(
        @Property(value = "Origin of the limit: 8 gpm per square foot of tank, 5 gpm per cubic foot of resin for continuous "
                + "flow, 10 gpm per cubic foot for peak flow, or a pressure drop of 15 psi in the bed.",
                example = "\"surfaceVelocity\"") ServiceFlow.Limit limit,
        @Property("Maximum flow with a clean bed.") FlowQuantity flow,
        @Property("Maximum flow with crushed beads.") FlowQuantity crushedFlow) {
}
