// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.upkeep;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.text.Message;
import dev.brinebook.upkeep.UpkeepItem;
import dev.brinebook.upkeep.UpkeepTask;
import java.time.LocalDate;
import java.util.List;

@SchemaDescription("A task of the upkeep, with what makes it due and its dates.")
public record UpkeepLine(
        @Property(value = "Stable code.", example = "\"resinCleaner\"") UpkeepItem item,
        @Property(value = "What to do.", example = "\"Clean the resin with resin cleaner.\"") Message task,
        @Property(value = "What makes it due before its date.", example = "\"Sooner if the tap stains.\"") Message trigger,
        @Basis(formula = "formula.upkeep.everyDays", source = "CP-UPKEEP")
        @Property(value = "Days from one to the next; of the resin, days until its replacement.",
                optional = "when only a trigger makes it due", min = 0, unit = "days", example = "215") Integer everyDays,
        @Property(value = "Key of the source of its interval.", example = "\"CP-UPKEEP\"") String source,
        @Property(value = "Dates in the time planned, in order.", maxItems = UpkeepLine.MOST_DATES, example = "[\"2026-10-03\"]")
        List<LocalDate> dates) {

    /** A look at the salt in each month of ten years, and a test on the first day. */
    static final int MOST_DATES = 130;

    static UpkeepLine of(UpkeepTask task) {
        return new UpkeepLine(task.item(), Message.of(task.item()), task.item().trigger(),
                task.everyDays().isPresent() ? task.everyDays().getAsInt() : null, task.item().sourceKey(), task.dates());
    }
}
