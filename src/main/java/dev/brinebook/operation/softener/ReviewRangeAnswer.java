// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.softener;

import dev.brinebook.answer.softener.SettingFinding;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.softener.BedUncertainty;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.softener.Finding;
import dev.brinebook.softener.Review;
import dev.brinebook.softener.ReviewRange;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("Effect of the uncertainty of a measurement on the settings to change and on what they save.")
public record ReviewRangeAnswer(
        @Property("At the lower end of the uncertainty.") ReviewEnd low,
        @Property("At the upper end of the uncertainty.") ReviewEnd high,
        @Property(value = "What to do, if the uncertainty decides which settings to change.",
                optional = "when both ends change the same settings", example = "\"Measure again before you change settings.\"")
        Message advice) {

    @SchemaDescription("The review at one end of the uncertainty of a measurement.")
    public record ReviewEnd(
            @Property("Resin volume at this end.") VolumeQuantity resinVolume,
            @Property("Present salt per regeneration at this end.") MassQuantity saltAsFound,
            @Property("Capacity that this salt restores.") CapacityQuantity capacity,
            @Property(value = "Settings to change at this end.", eachOf = Finding.Code.class) List<SettingFinding> findings,
            @Property("Salt saved per year by all of them at this end. Negative if they use more.") MassQuantity saltSavedPerYear,
            @Property("Regeneration water saved per year by all of them at this end. Negative if they use more.")
            VolumeQuantity waterSavedPerYear) {
    }

    /** By the uncertainty of what was measured; null where it is taken as exact. */
    static ReviewRangeAnswer of(ExistingSoftener found, BedUncertainty uncertainty, DesignConditions duty, RunningCost cost,
            AnswerUnits units) {
        return ReviewRange.of(found, uncertainty, duty, cost).map(range -> new ReviewRangeAnswer(end(range.low(), duty, units),
                end(range.high(), duty, units), range.differs() ? Message.of("reviewSettings.measureAgainBefore") : null)).orElse(null);
    }

    private static ReviewEnd end(Review review, DesignConditions duty, AnswerUnits units) {
        SoftenerSettings found = review.asFound().setup();
        SoftenerSettings.Difference saved = review.asFound().minus(review.corrected());
        return new ReviewEnd(units.resinVolume(found.softener().bed().resinLitres()),
                units.mass(found.softener().saltGrams(found.saltDoseGramsPerLitre()) / 1000), units.capacity(found.capacityGrams()),
                review.findings().stream().map(finding -> SettingFinding.of(finding, found.softener(), duty, units)).toList(),
                units.mass(saved.saltKilograms()), units.volume(saved.waterLitres()));
    }
}
