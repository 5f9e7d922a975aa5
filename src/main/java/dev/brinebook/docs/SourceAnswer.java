package dev.brinebook.docs;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.source.Source;
import java.util.List;

@About("A publication, or a fact of the trade, that numbers rest on.")
public record SourceAnswer(
        @Property(value = "Short name in the register; /docs/sources has an anchor of this name.",
                example = "\"NSDWR\"") String key,
        @Property(value = "The words in which basis and cautions of answers cite it.",
                example = "\"40 CFR 143.3, national secondary drinking water regulations (2023)\"") String cited,
        @Property(value = "What it is, in words.",
                example = "\"40 CFR 143.3, national secondary drinking water regulations\"") String citation,
        @Property(value = "Year or edition, or undated.", example = "\"2023\"") String edition,
        @Property("How far it can be trusted.") Source.Kind kind,
        @Property(value = "What is taken from it.",
                example = "\"iron 0.3, manganese 0.05, dissolved solids 500 mg/L, pH 6.5 to 8.5\"") String takes,
        @Property("What rests on it in the committed examples, by operation. Empty for a source that no example cites: it"
                + " stands behind a formula or table, or in cases that the examples do not show.")
        List<RestingAnswer> restsOn) {
}
