// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.model.Model;
import dev.brinebook.model.ModelChange;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.regeneration.BrineMixing;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.InjectorFlows;
import dev.brinebook.resin.Backwash;
import dev.brinebook.resin.Brining;
import dev.brinebook.text.Message;
import java.util.OptionalDouble;

@SchemaDescription("Flows set by the hardware of the valve, as far as known.")
public record FlowsRequest(
        @Property(value = "Drain line flow control, which sets the backwash.", min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE,
                max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min",
                fallback = "the next half gallon per minute that expands the bed by "
                + (int) (100 * Backwash.TARGET_EXPANSION_SHARE) + " %") FlowQuantity drain,
        @Property(value = "Flow of the injector through the bed, during brine draw and slow rinse.",
                min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE, max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE,
                unit = "L/min", fallback = CycleDesign.ASSUMED_BRINE_BED_VOLUMES_PER_HOUR + " bed volumes an hour, or the flow that makes "
                + FlowsRequest.BRINE_PERCENT + " % brine from brineSuction")
        FlowQuantity brineDraw,
        @Property(value = "Flow of saturated brine that the injector draws from the tank. It is less than brineDraw, which includes the "
                + "drawing water. Together they set the strength of the brine.",
                min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE, max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE,
                unit = "L/min", fallback = "the flow that makes " + FlowsRequest.BRINE_PERCENT + " % brine") FlowQuantity brineSuction,
        @Property(value = "Flow of the fast rinse, if it does not run through the drain line flow control.",
                min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE, max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE,
                unit = "L/min", fallback = "the flow of the backwash") FlowQuantity fastRinse,
        @Property(value = "Brine refill.", min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE,
                max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min",
                byDefault = CycleDesign.ASSUMED_REFILL_GALLONS_PER_MINUTE, defaultUnit = "gpm") FlowQuantity refill,
        @Property(value = "Maximum flow of the water supply at the softener.", min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE,
                max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min", fallback = "unknown: no limit")
        FlowQuantity supply,
        @Property(value = "Maximum flow of the drain. Backwash and rinses get the smallest of the drain line flow control, the "
                + "drain and the supply.", min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE,
                max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min", fallback = "unknown: no limit")
        FlowQuantity drainLine) implements Checked {

    public static final double MAX_FLOW_LITRES_PER_MINUTE = 500;
    static final int BRINE_PERCENT = (int) (100 * Brining.DILUTED_SALT_SHARE);

    @Override
    public void check(Violations at) {
        if (brineSuction != null && brineDraw != null && !at.at("brineSuction").here() && !at.at("brineDraw").here()
                && !(brineSuction.inBase() < brineDraw.inBase())) {
            at.add("brineSuction", Code.INCONSISTENT, Message.of("problem.softener.mustBelowBrinedrawPart"));
        }
    }

    /** The flows in SI, of the valve and of its site. */
    public CycleFlows toDomain(Model model) {
        BrineMixing mixing = model.has(ModelChange.BRINE_BY_WEIGHT) ? BrineMixing.BY_WEIGHT : BrineMixing.BY_VOLUME;
        return new CycleFlows(base(drain), new InjectorFlows(base(brineSuction), base(brineDraw), mixing), base(fastRinse),
                base(refill), base(drainLine), base(supply));
    }

    public static OptionalDouble base(Quantity<?> given) {
        return given == null ? OptionalDouble.empty() : OptionalDouble.of(given.inBase());
    }
}
