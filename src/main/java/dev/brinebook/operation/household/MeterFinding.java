package dev.brinebook.operation.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.wording.Message;
import java.time.LocalDate;

@About("Something that the series shows and a person should look at.")
public record MeterFinding(
        @Property("Stable code of the finding.") Code code,
        @Property(value = "What was found, in a sentence.", example = "\"From 2026-03-12 on a day has 410 L on average, 300 L"
                + " before.\"") Message message,
        @Property(value = "First day concerned.", optional = "when it concerns the whole series", example = "\"2026-03-12\"")
        LocalDate firstDate,
        @Property(value = "Last day concerned.", optional = "when firstDate is", example = "\"2026-06-30\"") LocalDate lastDate,
        @Property(value = "Mean use of a day before.", optional = "unless the level changed") VolumeQuantity before,
        @Property(value = "Mean use of a day after, or what runs in a day without a stop, or by how much a day has grown in 30"
                + " days; below 0 where it fell.", optional = "when it is no volume") VolumeQuantity perDay) {

    /** Kinds of finding. */
    public enum Code {
        LEVEL_CHANGED, DRIFT, NIGHT_FLOW, HIGH_DAYS, UNUSUAL_USE
    }
}
