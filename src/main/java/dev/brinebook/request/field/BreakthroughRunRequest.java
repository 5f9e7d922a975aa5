// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.field;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.request.softener.PlusMinus;
import dev.brinebook.text.Message;

@SchemaDescription("A run after a full regeneration until the outlet ran hard.")
public record BreakthroughRunRequest(
        @Property(value = "Water by the meter until the first test that was hard.", required = true, min = 10, max = 500_000, unit = "L")
        VolumeQuantity volume,
        @Property(value = "Water between two tests, at most the volume. The end lies within the last of them.", required = true, min = 1,
                max = 500_000, unit = "L") VolumeQuantity testStep) implements Checked {

    @Override
    public void check(Violations at) {
        if (PlusMinus.isWhole(volume) && PlusMinus.isWhole(testStep) && !at.here() && !(testStep.inBase() <= volume.inBase())) {
            at.add("testStep", Code.INCONSISTENT, Message.of("problem.field.mostVolume"));
        }
    }
}
