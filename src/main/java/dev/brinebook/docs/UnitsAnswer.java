// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import java.util.List;

@SchemaDescription("Every kind of quantity, with the units that a request may use. Money has the ISO 4217 codes of currencies instead.")
public record UnitsAnswer(
        @Property(value = "The kinds, sorted by name.", maxItems = UnitsAnswer.MAX_KINDS) List<UnitKindAnswer> kinds,
        @Property(value = "Version of the formulas and data.", example = "\"1.1.0\"") String modelVersion) {

    /** More kinds than any household softener needs. */
    static final int MAX_KINDS = 40;
}
