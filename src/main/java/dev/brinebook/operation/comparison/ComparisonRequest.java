// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.comparison;

import dev.brinebook.api.Checked;
import dev.brinebook.api.JsonObject;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.text.Message;

@SchemaDescription("A case to compare by two versions of the formulas and data, or two cases by one.")
public record ComparisonRequest(
        @Property(value = "Operation ID of the calculator that answers the case.", required = true, minItems = 1, maxItems = 40,
                example = "\"assess\"") String calculator,
        @Property(value = "The case: a request of that operation.", required = true,
                example = "{\"hardness\": {\"value\": 18.5, \"unit\": \"gpg\"}}") JsonObject thisCase,
        @Property(value = "Another case, to compare two cases by one version. Without it one case is compared by two versions.")
        JsonObject otherCase,
        @Property(value = "Version to answer the case by.", minItems = 1, maxItems = 20, fallback = "the version before the current one, "
                + "and of two cases that of the header Model-Version", example = "\"2.2.0\"") String modelVersion,
        @Property(value = "Version to compare with.", minItems = 1, maxItems = 20,
                fallback = "that of the header Model-Version, or the current one", example = "\"2.3.0\"") String otherModelVersion)
        implements Checked {

    @Override
    public void check(Violations at) {
        if (otherCase != null && otherModelVersion != null) {
            at.add("otherModelVersion", Code.INCONSISTENT, Message.of("problem.comparison.omitWhenOtherCaseGiven"));
        }
    }
}
