package dev.brinebook.docs;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import java.util.List;

@About("The register of sources: everything that the numbers of answers rest on.")
public record SourcesAnswer(
        @Property("All sources, in the order of the register.") List<SourceAnswer> sources,
        @Property(value = "Version of the formulas and data.", example = "\"1.1.0\"") String modelVersion) {
}
