// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.text.Message;

@SchemaDescription("A value that the calculation assumed.")
public record AssumptionAnswer(
        @Property(value = "Name of the assumed value. For a property of the request, its name.",
                example = "\"water.temperature\"") String name,
        @Property(value = "The value used, with its unit.", example = "\"12 C\"") Message value,
        @Property("Origin of the value: given in the request, a default, or derived from other values.") Origin origin) {

    /** Where an assumed value came from. */
    public enum Origin {
        CALLER, DEFAULT, DERIVED
    }
}
