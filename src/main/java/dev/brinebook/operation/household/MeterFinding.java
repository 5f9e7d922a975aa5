// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.text.Message;
import java.time.LocalDate;

@SchemaDescription("A finding in the series that a person should check.")
public record MeterFinding(
        @Property("Stable code of the finding.") Code code,
        @Property(value = "The finding, in a sentence.", example = "\"From 2026-03-12 the mean use is 410 L a day. "
                + "Before it was 300 L.\"") Message message,
        @Property(value = "First day of the finding.", optional = "when it applies to the whole series", example = "\"2026-03-12\"")
        LocalDate firstDate,
        @Property(value = "Last day of the finding.", optional = "when firstDate is absent", example = "\"2026-06-30\"") LocalDate lastDate,
        @Property(value = "Mean use per day before the change.", optional = "unless the level changed") VolumeQuantity before,
        @Property(value = "Mean use per day after the change; or the continuous flow in a day; or the growth of the use per "
                + "day within 30 days, negative if it fell.", optional = "when the finding has no volume") VolumeQuantity perDay) {

    /** Kinds of finding. */
    public enum Code {
        LEVEL_CHANGED, DRIFT, NIGHT_FLOW, HIGH_DAYS, UNUSUAL_USE
    }
}
