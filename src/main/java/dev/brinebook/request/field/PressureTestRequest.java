// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.field;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.PressureQuantity;

@SchemaDescription("Pressure behind the softener at rest and at one flow, in service and in bypass, by the same gauge.")
public record PressureTestRequest(
        @Property(value = "At rest, in service.", required = true, min = 0, max = PressureTestRequest.MAX_KILOPASCALS, unit = "kPa")
        PressureQuantity rest,
        @Property(value = "At the flow, in service.", required = true, min = 0, max = PressureTestRequest.MAX_KILOPASCALS, unit = "kPa")
        PressureQuantity flowing,
        @Property(value = "At rest, in bypass.", min = 0, max = PressureTestRequest.MAX_KILOPASCALS, unit = "kPa",
                fallback = "as in service") PressureQuantity bypassRest,
        @Property(value = "At the same flow, in bypass.", required = true, min = 0, max = PressureTestRequest.MAX_KILOPASCALS,
                unit = "kPa") PressureQuantity bypassFlowing,
        @Property(value = "How far each reading may be off either way against the others of the same gauge.", min = 0.01, max = 50,
                unit = "kPa", byDefault = 1, defaultUnit = "psi", fallback = "half a mark") PressureQuantity plusMinus) {

    static final double MAX_KILOPASCALS = 1600;

    /** What is lost in service more than in bypass, kPa. */
    double dropKilopascals() {
        double atRest = bypassRest == null ? 0 : rest.inBase() - bypassRest.inBase();
        return atRest + bypassFlowing.inBase() - flowing.inBase();
    }

    /** Readings that the drop is made of. */
    int readings() {
        return bypassRest == null ? 2 : 4;
    }
}
