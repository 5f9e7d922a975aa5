// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.source.Source;
import java.util.List;

@SchemaDescription("A publication or common practice that numbers are based on.")
public record SourceAnswer(
        @Property(value = "Key in the register, and anchor in /docs/sources.",
                example = "\"NSDWR\"") String key,
        @Property(value = "Citation used in basis and cautions of answers.",
                example = "\"40 CFR 143.3, national secondary drinking water regulations (2023)\"") String cited,
        @Property(value = "Full title.",
                example = "\"40 CFR 143.3, national secondary drinking water regulations\"") String citation,
        @Property(value = "Year or edition, or undated.", example = "\"2023\"") String edition,
        @Property(value = "A page or DOI of the work.", optional = "when none is known for certain",
                example = "\"https://www.ecfr.gov/current/title-40/part-143\"") String url,
        @Property("Reliability of the source.") Source.Kind kind,
        @Property(value = "Data and formulas taken from it.",
                example = "\"iron 0.3, manganese 0.05, dissolved solids 500 mg/L, pH 6.5 to 8.5\"") String takes,
        @Property(value = "Results based on it in the published examples, by operation. Empty for a source that no example cites: "
                + "it is used in a formula or table, or in cases without an example.", maxItems = SourcesAnswer.MOST_OPERATIONS)
        List<SourceUsageAnswer> restsOn) {
}
