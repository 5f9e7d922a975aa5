// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.request.softener.ControlRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.request.softener.StepMinutesRequest;

@SchemaDescription("Settings to commission. Omit those that are to be as assess would advise.")
public record CommissioningSettingsRequest(
        @Property(value = "The controller, with its settings.", fallback = "a delayed meter with the settings that assess advises")
        ControlRequest control,
        @Property(value = "Salt dose.", min = 0, aboveMin = true, max = SoftenerRequest.MAX_ANY_DOSE_GRAMS_PER_LITRE, unit = "g/L",
                fallback = "the dose that assess advises") SaltDoseQuantity saltDose,
        @Property(value = "Minutes of each step.", fallback = "those of the cycle that is designed for the dose")
        StepMinutesRequest minutes) {

    static final CommissioningSettingsRequest ADVISED = new CommissioningSettingsRequest(null, null, null);

    static CommissioningSettingsRequest orAdvised(CommissioningSettingsRequest given) {
        return given == null ? ADVISED : given;
    }
}
