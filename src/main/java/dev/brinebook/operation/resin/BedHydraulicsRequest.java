package dev.brinebook.operation.resin;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.api.quantity.TemperatureQuantity;
import dev.brinebook.household.Country;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.request.softener.FlowsRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.resin.Packing;
import dev.brinebook.softener.BedDuty;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("A bed whose pressure drop, flows and backwash are to be worked out.")
public record BedHydraulicsRequest(
        @Property(value = "The softener: its resin, its tank, and of its flows those of drain and supply. Nothing else of it"
                + " is needed here.", required = true) SoftenerRequest softener,
        @Property(value = "Temperature of the water: the coldest loses most pressure and lifts the bed most, the warmest"
                + " needs the strongest backwash.", min = WaterAnalysis.MIN_TEMPERATURE_CELSIUS,
                max = WaterAnalysis.MAX_TEMPERATURE_CELSIUS, unit = "C", fallback = "12 C")
        TemperatureQuantity waterTemperature,
        @Property("The bead, where it is not the usual one.") BeadRequest bead,
        @Property(value = "Part of the beads, by volume, that counts as crushed in the second pressure drop.", min = 0,
                max = BedHydraulicsRequest.MAX_CRUSHED_PERCENT, unit = "%", example = "20", fallback = "20 %")
        BigDecimal crushedPercent,
        @Property(value = "How far the backwash is to lift the bed, in percent of its depth.",
                min = BedHydraulicsRequest.MIN_TARGET_PERCENT, max = BedHydraulicsRequest.MAX_TARGET_PERCENT, unit = "%",
                example = "50", fallback = "50 %") BigDecimal targetExpansionPercent,
        @Property(value = "Flow that lasts, to hold against the limits.", min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE,
                max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min", fallback = "none: only the flows of the"
                + " guides are worked out") FlowQuantity serviceFlow,
        @Property(value = "Short peaks, to hold against the limits.", min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE,
                max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min", fallback = "none: only the flows of the"
                + " guides are worked out") FlowQuantity peakFlow,
        @Property(value = HomeCountry.DESCRIPTION, fallback = "unitedStates", example = "\"germany\"") Country country,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units)
        implements Checked {

    static final double MAX_CRUSHED_PERCENT = 100 * Packing.MAX_CRUSHED_SHARE;
    static final double MIN_TARGET_PERCENT = 100 * BedDuty.MIN_TARGET_EXPANSION_SHARE;
    static final double MAX_TARGET_PERCENT = 100 * BedDuty.MAX_TARGET_EXPANSION_SHARE;

    @Override
    public void check(Violations at) {
        if (isWhole(serviceFlow) && isWhole(peakFlow) && peakFlow.inBase() < serviceFlow.inBase()) {
            at.add("peakFlow", Code.INCONSISTENT, Message.of("must not be less than serviceFlow"));
        }
    }

    private static boolean isWhole(FlowQuantity flow) {
        return flow != null && flow.value() != null && flow.unit() != null;
    }
}
