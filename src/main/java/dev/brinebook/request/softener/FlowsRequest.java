package dev.brinebook.request.softener;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.wording.Message;
import java.util.OptionalDouble;

@About("Flows that the hardware of the valve fixes, as far as known.")
public record FlowsRequest(
        @Property(value = "Drain line flow control, which sets the backwash.", min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE,
                max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min",
                fallback = "the next half gallon per minute that lifts the bed by half") FlowQuantity drain,
        @Property(value = "What the injector sends through the bed while it draws brine, and in the slow rinse.",
                min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE, max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE,
                unit = "L/min", fallback = "2.5 bed volumes an hour, or what makes 10 % brine of brineSuction")
        FlowQuantity brineDraw,
        @Property(value = "Saturated brine that the injector draws from the tank: less than brineDraw, which is that brine and"
                + " the water that draws it. The two set the strength of the brine.",
                min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE, max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE,
                unit = "L/min", fallback = "what makes 10 % brine") FlowQuantity brineSuction,
        @Property(value = "Fast rinse, where it does not run through the drain line flow control.",
                min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE, max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE,
                unit = "L/min", fallback = "as the backwash") FlowQuantity fastRinse,
        @Property(value = "Refill of the brine tank.", min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE,
                max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min", fallback = "0.5 gpm") FlowQuantity refill,
        @Property(value = "The most that the supply can give at the softener.", min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE,
                max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min", fallback = "unknown: it limits nothing")
        FlowQuantity supply,
        @Property(value = "The most that the drain takes. Backwash and rinses get the least of the drain line flow control, this and"
                + " the supply.", min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE,
                max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min", fallback = "unknown: it limits nothing")
        FlowQuantity drainLine) implements Checked {

    public static final double MAX_FLOW_LITRES_PER_MINUTE = 500;

    @Override
    public void check(Violations at) {
        if (brineSuction != null && brineDraw != null && !at.at("brineSuction").here() && !at.at("brineDraw").here()
                && !(brineSuction.inBase() < brineDraw.inBase())) {
            at.add("brineSuction", Code.INCONSISTENT, Message.of("must be below brineDraw, of which it is a part"));
        }
    }

    /** The flows in SI, of the valve and of its site. */
    public CycleFlows toDomain() {
        return new CycleFlows(base(drain), base(brineSuction), base(brineDraw), base(fastRinse), base(refill),
                base(drainLine), base(supply));
    }

    public static OptionalDouble base(Quantity<?> given) {
        return given == null ? OptionalDouble.empty() : OptionalDouble.of(given.inBase());
    }
}
