// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import java.util.List;

@SchemaDescription("The register of sources: everything that the numbers in answers are based on.")
public record SourcesAnswer(
        @Property(value = "All sources, in the order of the register.", maxItems = SourcesAnswer.MOST_SOURCES) List<SourceAnswer> sources,
        @Property(value = "Version of the formulas and data.", example = "\"1.1.0\"") String modelVersion) {

    /** The register may grow. */
    static final int MOST_SOURCES = 1_000;
    static final int MOST_OPERATIONS = 100;
}
