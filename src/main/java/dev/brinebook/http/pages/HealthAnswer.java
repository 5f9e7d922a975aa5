package dev.brinebook.http.pages;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;

@About("Whether the service is up.")
public record HealthAnswer(
        @Property(value = "The state: up, or stopping.", example = "\"up\"") String status) {
}
