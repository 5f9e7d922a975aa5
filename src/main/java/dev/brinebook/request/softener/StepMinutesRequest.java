// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import java.math.BigDecimal;

@SchemaDescription("Minutes set for each step of the regeneration.")
public record StepMinutesRequest(
        @Property(value = "Backwash.", min = 0, max = StepMinutesRequest.MAX_MINUTES, unit = "minutes", example = "10")
        BigDecimal backwash,
        @Property(value = "Brine draw and slow rinse together.", min = 0, max = StepMinutesRequest.MAX_MINUTES,
                unit = "minutes", example = "60") BigDecimal brineAndSlowRinse,
        @Property(value = "Second backwash, if there is one.", min = 0, max = StepMinutesRequest.MAX_MINUTES,
                unit = "minutes", example = "0") BigDecimal secondBackwash,
        @Property(value = "Fast rinse.", min = 0, max = StepMinutesRequest.MAX_MINUTES, unit = "minutes", example = "6")
        BigDecimal fastRinse,
        @Property(value = "Brine refill.", min = 0, aboveMin = true,
                max = StepMinutesRequest.MAX_MINUTES, unit = "minutes",
                example = "7") BigDecimal refill) {

    /** Longest step that a controller offers, with room to spare. */
    static final double MAX_MINUTES = 240;
}
