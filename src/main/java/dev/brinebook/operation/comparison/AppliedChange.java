// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.comparison;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.text.Message;

@SchemaDescription("A change of the model between the two versions, whose effects the changelog has.")
public record AppliedChange(
        @Property(value = "Its ID in the changelog.", example = "\"brine-by-weight\"") String id,
        @Property(value = "Version that it came with.", example = "\"2.3.0\"") String version,
        @Property(value = "What changed.", example = "\"Brine is mixed by weight.\"") Message text,
        @Basis(formula = "formula.comparison.differencesThatNameChange", source = "REQUEST")
        @Property(value = "Differences that it causes, alone or together with others; 0 if it does not concern this case.",
                unit = "differences", example = "3") Integer differences) {
}
