// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.pages;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;

@SchemaDescription("Versions of the service and of its formulas.")
public record VersionAnswer(
        @Property(value = "Version of the service.", example = "\"1.0.0\"") String version,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
