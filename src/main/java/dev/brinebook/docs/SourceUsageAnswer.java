// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.caution.Caution;
import java.util.List;

@SchemaDescription("Results of one operation that are based on a source.")
public record SourceUsageAnswer(
        @Property(value = "Operation ID.", example = "\"compensateHardness\"") String operation,
        @Property(value = "JSON pointers to the results. `*` means every element of a list.",
                example = "[\"/hardness/iron\"]", maxItems = Explanation.MOST_ENTRIES) List<String> results,
        @Property(value = "Codes of the cautions.", example = "[\"ironStains\"]", eachOf = Caution.class) List<String> cautions) {
}
