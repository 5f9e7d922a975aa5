package dev.brinebook.request.softener;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import java.math.BigDecimal;

@About("Minutes of each step of the regeneration, as set.")
public record StepMinutesRequest(
        @Property(value = "Backwash.", min = 0, max = StepMinutesRequest.MAX_MINUTES, unit = "minutes", example = "10")
        BigDecimal backwash,
        @Property(value = "Brine draw and slow rinse together.", min = 0, max = StepMinutesRequest.MAX_MINUTES,
                unit = "minutes", example = "60") BigDecimal brineAndSlowRinse,
        @Property(value = "Second backwash, where there is one.", min = 0, max = StepMinutesRequest.MAX_MINUTES,
                unit = "minutes", example = "0") BigDecimal secondBackwash,
        @Property(value = "Fast rinse.", min = 0, max = StepMinutesRequest.MAX_MINUTES, unit = "minutes", example = "6")
        BigDecimal fastRinse,
        @Property(value = "Refill of the brine tank.", min = 0, aboveMin = true,
                max = StepMinutesRequest.MAX_MINUTES, unit = "minutes",
                example = "7") BigDecimal refill) {

    /** Longest step that a controller offers, with room to spare. */
    static final double MAX_MINUTES = 240;
}
