package dev.brinebook.http.pages;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;

@About("What version answers.")
public record VersionAnswer(
        @Property(value = "Version of the service.", example = "\"1.0.0\"") String version,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
