// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
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
import dev.brinebook.resin.Backwash;
import dev.brinebook.resin.Packing;
import dev.brinebook.softener.BedDuty;
import dev.brinebook.text.Message;
import dev.brinebook.water.WaterAnalysis;
import java.math.BigDecimal;

@SchemaDescription("A bed, to calculate its pressure drop, flow limits and backwash.")
public record BedHydraulicsRequest(
        @Property(value = "The softener: resin, tank, and the flows of drain and supply. "
                + "Nothing else is needed here.", required = true) SoftenerRequest softener,
        @Property(value = "Temperature of the water. The coldest water has the highest pressure drop and lifts the bed most. "
                + "The warmest needs the strongest backwash.", min = WaterAnalysis.MIN_TEMPERATURE_CELSIUS,
                max = WaterAnalysis.MAX_TEMPERATURE_CELSIUS, unit = "C", byDefault = WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS)
        TemperatureQuantity waterTemperature,
        @Property("The resin bead, if it is not the usual one.") BeadRequest bead,
        @Property(value = "Share of crushed beads, by volume, in the second pressure drop.", min = 0,
                max = BedHydraulicsRequest.MAX_CRUSHED_PERCENT, unit = "%", example = "20",
                byDefault = BedHydraulicsRequest.ASSUMED_CRUSHED_PERCENT)
        BigDecimal crushedPercent,
        @Property(value = "Target bed expansion, in percent of the bed depth.",
                min = BedHydraulicsRequest.MIN_TARGET_PERCENT, max = BedHydraulicsRequest.MAX_TARGET_PERCENT, unit = "%",
                example = "50", byDefault = BedHydraulicsRequest.DEFAULT_TARGET_PERCENT) BigDecimal targetExpansionPercent,
        @Property(value = "Continuous flow, to compare with the limits.", min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE,
                max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min", fallback = "none: only the "
                + "flows of the guides are calculated") FlowQuantity serviceFlow,
        @Property(value = "Peak flow, to compare with the limits.", min = CycleFlows.MIN_FLOW_LITRES_PER_MINUTE,
                max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE, unit = "L/min", fallback = "none: only the flows "
                + "of the guides are calculated") FlowQuantity peakFlow,
        @Property(value = HomeCountry.DESCRIPTION, defaultCode = "unitedStates", example = "\"germany\"") Country country,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units)
        implements Checked {

    static final double ASSUMED_CRUSHED_PERCENT = 100 * Packing.ASSUMED_CRUSHED_SHARE;
    static final double DEFAULT_TARGET_PERCENT = 100 * Backwash.TARGET_EXPANSION_SHARE;
    static final double MAX_CRUSHED_PERCENT = 100 * Packing.MAX_CRUSHED_SHARE;
    static final double MIN_TARGET_PERCENT = 100 * BedDuty.MIN_TARGET_EXPANSION_SHARE;
    static final double MAX_TARGET_PERCENT = 100 * BedDuty.MAX_TARGET_EXPANSION_SHARE;

    @Override
    public void check(Violations at) {
        if (isWhole(serviceFlow) && isWhole(peakFlow) && peakFlow.inBase() < serviceFlow.inBase()) {
            at.add("peakFlow", Code.INCONSISTENT, Message.of("problem.resin.mustLeastServiceflow"));
        }
    }

    private static boolean isWhole(FlowQuantity flow) {
        return flow != null && flow.value() != null && flow.unit() != null;
    }
}
