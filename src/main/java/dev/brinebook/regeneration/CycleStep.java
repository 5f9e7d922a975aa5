// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.text.Localizable;
import dev.brinebook.text.Message;
import java.util.Optional;

/**
 * One step of a regeneration.
 *
 * @param kind which step
 * @param minutes how long it runs; not rounded
 * @param flowLitresPerMinute flow through the bed, or into the brine tank
 * @param lineWaterLitres water taken from the line
 * @param drainLitres water and brine sent to the drain
 */
public record CycleStep(Kind kind, double minutes, double flowLitresPerMinute, double lineWaterLitres,
        double drainLitres) {

    /**
     * Minutes that a step takes by the guides.
     *
     * @param sourceKey key of the source
     */
    public record Guide(double minMinutes, double maxMinutes, String sourceKey) {

        public boolean includes(double minutes) {
            return minutes >= minMinutes && minutes <= maxMinutes;
        }
    }

    /** The steps, in their order, each with its guide and what it is for. */
    public enum Kind implements Localizable {
        /** Source of the guide: [CP-CYCLE]; 5 to 15 minutes are in use. */
        BACKWASH(Message.of("cycleStep.backwashLoosensBedCarries"),
                new Guide(8, 10, "CP-CYCLE")),
        /** Source of the guide: [DAVIS] p. 8-19; [CP-CYCLE] has 60 minutes. */
        BRINE_AND_SLOW_RINSE(Message.of("cycleStep.brinePassesSlowlyThrough"), new Guide(30, 60, "DAVIS")),
        /** Source of the guide: [CP-CYCLE], 8 minutes where it is used. */
        SECOND_BACKWASH(Message.of("cycleStep.secondBackwashLiftsBed"),
                new Guide(8, 10, "CP-CYCLE")),
        /** Source of the guide: [CP-CYCLE]; 5 to 15 minutes are in use. */
        FAST_RINSE(Message.of("cycleStep.fastRinseSettlesBed"),
                new Guide(4, 10, "CP-CYCLE")),
        /** No guide: the salt dose sets the minutes. */
        REFILL(Message.of("cycleStep.brineRefillPutsInto"), null);

        private final Message purpose;
        private final Guide guide;

        Kind(Message purpose, Guide guide) {
            this.purpose = purpose;
            this.guide = guide;
        }

        /** What the step does, as the end of a sentence that begins with its name. */
        public Message purpose() {
            return purpose;
        }

        /** The usual minutes, where minutes are a matter of custom. */
        public Optional<Guide> guide() {
            return Optional.ofNullable(guide);
        }

        @Override
        public String textId() {
            return Localizable.idOf("cycleStepName", this);
        }
    }

    public CycleStep {
        Guard.positive(minutes, "minutes");
        Guard.positive(flowLitresPerMinute, "flowLitresPerMinute");
        Guard.notNegative(lineWaterLitres, "lineWaterLitres");
        Guard.notNegative(drainLitres, "drainLitres");
    }

    /** Whether the minutes lie inside the guide; a step without one has nothing to miss. */
    public boolean isWithinGuide() {
        return kind.guide().map(guide -> guide.includes(minutes)).orElse(true);
    }

    /**
     * The minutes to set on a controller that takes whole ones only: rounded up, so that no step falls short.
     *
     * <p>A longer backwash or rinse costs water; a longer refill puts more salt, see
     * {@link CycleDesign#saltGramsOfRefill}.
     */
    public int wholeMinutes() {
        return (int) Math.ceil(minutes);
    }

    /**
     * The minutes to set on a controller that takes tenths, to the nearest and at least one tenth: for the refill, whose
     * every minute puts salt.
     */
    public double nearestTenthMinutes() {
        return Math.max(1, Math.round(10 * minutes)) / 10.0;
    }

    /** The same step at the same flow for other minutes: only the water that flows with time changes. */
    CycleStep lasting(double otherMinutes) {
        double moreLitres = (Guard.positive(otherMinutes, "minutes") - minutes) * flowLitresPerMinute;
        return new CycleStep(kind, otherMinutes, flowLitresPerMinute, Math.max(0, lineWaterLitres + moreLitres),
                kind == Kind.REFILL ? 0 : Math.max(0, drainLitres + moreLitres));
    }

    /** This step's minutes and flow under another name. */
    CycleStep as(Kind other) {
        return new CycleStep(other, minutes, flowLitresPerMinute, lineWaterLitres, drainLitres);
    }
}
