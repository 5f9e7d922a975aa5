// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.pages;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;

@SchemaDescription("Whether the service is up.")
public record HealthAnswer(
        @Property(value = "The state: up, or stopping.", example = "\"up\"") String status) {
}
