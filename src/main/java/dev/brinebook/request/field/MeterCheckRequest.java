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

@SchemaDescription("A check of the meter of the controller against a bucket.")
public record MeterCheckRequest(
        @Property(value = "Water caught in one fill of the bucket.", required = true, min = BucketRequest.MIN_LITRES,
                max = BucketRequest.MAX_LITRES, unit = "L") VolumeQuantity bucket,
        @Property(value = "Number of fills.", required = true, min = 1, max = 500, example = "6") Integer fills,
        @Property(value = "Difference of the readings of the meter before and after.", required = true, min = 0, aboveMin = true,
                max = MeterCheckRequest.MAX_COUNT_LITRES, unit = "L") VolumeQuantity counted,
        @Property(value = "Step of its display, less than what it counted.", min = 0, aboveMin = true,
                max = MeterCheckRequest.MAX_COUNT_LITRES, unit = "L", byDefault = 1, defaultUnit = "gal") VolumeQuantity displayStep,
        @Property(value = "Whether the bucket was weighed.", defaultCode = "false", example = "true") Boolean weighed)
        implements Checked {

    static final double MAX_COUNT_LITRES = 500_000;
    /** Most that the meter may count of the water caught, and least: beyond it something else was read. */
    static final double MOST_RATIO = 20;

    @Override
    public void check(Violations at) {
        if (!PlusMinus.isWhole(counted) || !PlusMinus.isWhole(bucket) || fills == null || at.here()) {
            return;
        }
        if (!(counted.inBase() > FieldReadings.stepLitres(displayStep))) {
            at.add("counted", Code.INCONSISTENT, Message.of("problem.field.aboveDisplayStep"));
        }
        double caught = bucket.inBase() * fills;
        if (!(counted.inBase() < MOST_RATIO * caught && counted.inBase() > caught / MOST_RATIO / MOST_RATIO)) {
            at.add("counted", Code.INCONSISTENT, Message.of("problem.field.countOfAnotherRun"));
        }
    }
}
