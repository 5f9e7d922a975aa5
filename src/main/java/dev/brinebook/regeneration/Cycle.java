// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.OptionalResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A regeneration, step by step.
 *
 * @param steps the steps in their order
 * @param backwashExpansionShare how far the backwash lifts the bed, as a share of its depth; none if it carries it out
 * @param backwashTargetLitresPerMinute the flow that lifts it by half
 * @param backwashFlow the flow that it gets, and what decides it
 * @param brine the brine and how it passes through the bed
 */
public record Cycle(List<CycleStep> steps, OptionalResult backwashExpansionShare, double backwashTargetLitresPerMinute,
        BackwashFlow backwashFlow, BrineDraw brine) {

    /**
     * The brine of a regeneration.
     *
     * @param saltGrams salt in it
     * @param saturatedLitres saturated brine drawn from the tank
     * @param dilutedSaltShare strength of what the injector makes of it, by weight
     * @param dilutedLitres how much that is
     * @param motiveLitres water that the injector adds
     * @param bedVolumesPerHour how fast that, and the slow rinse, pass the bed
     * @param drawMinutes how long the draw lasts
     * @param slowRinseMinutes how long the slow rinse after it lasts
     */
    public record BrineDraw(double saltGrams, double saturatedLitres, double dilutedSaltShare, double dilutedLitres,
            double motiveLitres, double bedVolumesPerHour, double drawMinutes, double slowRinseMinutes) {
    }

    public Cycle {
        steps = List.copyOf(steps);
        Objects.requireNonNull(backwashExpansionShare, "backwashExpansionShare");
        Guard.positive(backwashTargetLitresPerMinute, "backwashTargetLitresPerMinute");
        Objects.requireNonNull(backwashFlow, "backwashFlow");
        Objects.requireNonNull(brine, "brine");
    }

    /** The step of a kind that every cycle has. */
    public CycleStep step(CycleStep.Kind kind) {
        return steps.stream().filter(step -> step.kind() == kind).findFirst().orElseThrow();
    }

    /**
     * The same cycle with other minutes, as they are set on a controller: each flow stays, so water follows time. A step
     * set to 0 minutes is left out; a step that the settings do not name keeps its minutes.
     *
     * @param minutes minutes of each step that is set, 0 or above
     */
    public Cycle retimed(Map<CycleStep.Kind, Double> minutes) {
        List<CycleStep> changed = new ArrayList<>();
        for (CycleStep.Kind kind : CycleStep.Kind.values()) {
            Optional<CycleStep> designed = steps.stream().filter(step -> step.kind() == kind).findFirst();
            Double set = minutes.get(kind);
            if (set == null) {
                designed.ifPresent(changed::add);
            } else if (Guard.notNegative(set, "minutes") > 0) {
                changed.add(designed.orElseGet(() -> step(CycleStep.Kind.BACKWASH).as(kind)).lasting(set));
            }
        }
        return new Cycle(changed, backwashExpansionShare, backwashTargetLitresPerMinute, backwashFlow, brine);
    }

    /** The same cycle on a controller that takes whole minutes only: each rounded up, so that no step falls short. */
    public Cycle inWholeMinutes() {
        return retimed(steps.stream().collect(Collectors.toMap(CycleStep::kind, step -> (double) step.wholeMinutes())));
    }

    /** Time from the start of the backwash to the end of the refill. */
    public double totalMinutes() {
        return steps.stream().mapToDouble(CycleStep::minutes).sum();
    }

    /**
     * What the cycle restores and uses, for a simulation. Minutes set far too short or too long on a controller are
     * counted as the shortest and the longest that a {@link Regeneration} knows.
     *
     * @param capacityGrams capacity that it restores, as CaCO3
     * @param saltGrams salt that it dissolves
     */
    public Regeneration regeneration(double capacityGrams, double saltGrams) {
        double minutes = Math.min(Regeneration.MAX_MINUTES, Math.max(Regeneration.MIN_MINUTES, totalMinutes()));
        return new Regeneration(capacityGrams, saltGrams, waterLitres(), minutes);
    }

    /** Water taken from the line, the refill included. */
    public double waterLitres() {
        return steps.stream().mapToDouble(CycleStep::lineWaterLitres).sum();
    }

    /**
     * Water of the slow rinse in bed volumes: what the step has left once the brine is drawn. None where its minutes end
     * before that, or where it is left out.
     */
    public double slowRinseBedVolumes() {
        double minutes = steps.stream().filter(step -> step.kind() == CycleStep.Kind.BRINE_AND_SLOW_RINSE)
                .mapToDouble(CycleStep::minutes).sum();
        return Math.max(0, minutes - brine.drawMinutes()) * brine.bedVolumesPerHour() / 60;
    }

    /**
     * Whether the slow rinse drives the brine out of the voids of the bed: less leaves brine that has not worked.
     *
     * @param voidShare share of the bed that is not resin
     */
    public boolean rinsesTheVoids(double voidShare) {
        return slowRinseBedVolumes() >= Guard.within(voidShare, 0, 1, "voidShare");
    }

    /** Water and brine sent to the drain. The refill is not: it leaves with the next draw. */
    public double drainLitres() {
        return steps.stream().mapToDouble(CycleStep::drainLitres).sum();
    }

    /** Water taken from the line per kilogram of capacity, as CaCO₃, that it restores. */
    public double waterLitresPerKilogram(double capacityGrams) {
        return 1000 * waterLitres() / Guard.positive(capacityGrams, "capacityGrams");
    }
}
