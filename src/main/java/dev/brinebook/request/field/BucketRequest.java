// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.field;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.field.BucketFlow;
import dev.brinebook.request.softener.PlusMinus;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

@SchemaDescription("A flow measured by bucket and watch.")
public record BucketRequest(
        @Property(value = "Water caught in one fill.", required = true, min = BucketRequest.MIN_LITRES, max = BucketRequest.MAX_LITRES,
                unit = "L") VolumeQuantity volume,
        @Property(value = "Seconds of each fill.", required = true, minItems = 1, maxItems = 10, min = BucketFlow.MIN_SECONDS,
                max = BucketRequest.MAX_SECONDS, unit = "s") List<BigDecimal> seconds,
        @Property(value = "Whether the water was weighed instead of read at a mark.", defaultCode = "false", example = "true")
        Boolean weighed,
        @Property(value = "How far the volume may be off either way: at most a quarter of it.", min = 0, aboveMin = true,
                max = BucketRequest.MAX_LITRES, unit = "L", fallback = "by the size of the bucket: 0.15 gal of 5 gal")
        VolumeQuantity volumePlusMinus,
        @Property(value = "How far start and stop may each be off either way: at most a quarter of the time.", min = 0, aboveMin = true,
                max = BucketRequest.MAX_SECONDS, unit = "s", example = "0.5", byDefault = 0.3) BigDecimal secondsPlusMinus)
        implements Checked {

    static final double MIN_LITRES = 0.2;
    static final double MAX_LITRES = 250;
    static final double MAX_SECONDS = 7200;
    /** Largest ratio of repeats of one flow. */
    static final double ASSUMED_MOST_RATIO = 1.25;

    @Override
    public void check(Violations at) {
        PlusMinus.check(volumePlusMinus, volume, PlusMinus.MOST_SHARE, "volumePlusMinus", at);
        if (seconds == null || seconds.isEmpty() || seconds.stream().anyMatch(Objects::isNull) || at.at("seconds").here()) {
            return;
        }
        double least = seconds.stream().mapToDouble(BigDecimal::doubleValue).min().orElseThrow();
        double most = seconds.stream().mapToDouble(BigDecimal::doubleValue).max().orElseThrow();
        PlusMinus.check(secondsPlusMinus, BigDecimal.valueOf(least), "secondsPlusMinus", at);
        if (!(most <= ASSUMED_MOST_RATIO * least)) {
            at.add("seconds", Code.INCONSISTENT, Message.of("problem.field.repeatsDiffer"));
        }
    }

    double[] times() {
        return seconds.stream().mapToDouble(BigDecimal::doubleValue).toArray();
    }
}
