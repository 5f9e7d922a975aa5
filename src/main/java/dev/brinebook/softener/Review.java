// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * Holds the settings found on a softener against the same control set right: one path of findings, each with what it changes after
 * those before it.
 *
 * <p>First comes what protects the bed, then what stops hard water, then what saves salt and water, in the order of
 * {@link Finding.Code}; the slow rinse, which goes by the dose, is last. Dose and capacity, or dose and interval, are changed in one
 * step where one alone would cost more or let more hard water pass. A step that would cost more and stop no hard water waits for
 * the next, with which it is taken; what is left waiting in the end is no finding, unless the service standard, with its room for
 * more use, is kept only with it. Where the path saves nothing and the present settings meet the standard, only what protects is left.
 *
 * <p>A setting that differs from the one to set by no more than {@link Slack#ASSUMED} stays, as long as the standard is kept with it;
 * then the path ends beside the target.
 *
 * @param findings in the order of the path
 * @param asFound a year with the present settings
 * @param corrected a year after all findings; {@code asFound} less this is the sum of their differences
 */
public record Review(List<Finding> findings, SoftenerSettings.Year asFound, SoftenerSettings.Year corrected) {

    /** Hard days a year of which fewer are none. */
    static final double ASSUMED_SAME_HARD_DAYS = 0.01;

    public Review {
        findings = List.copyOf(findings);
    }

    /** The path to the softener's own control set right, at prices of salt and water. */
    public static Review of(ExistingSoftener found, DesignConditions duty, RunningCost cost) {
        return path(found, SetRight.of(found, duty, cost), duty, cost);
    }

    /** No path: a water that must be treated first has no right settings yet. */
    public static Review none(ExistingSoftener found, DesignConditions duty) {
        SoftenerSettings.Year asFound = found.setup().year(duty);
        return new Review(List.of(), asFound, asFound);
    }

    /** The path from the settings found to a target of the same control. */
    public static Review path(ExistingSoftener found, SetRight target, DesignConditions duty, RunningCost cost) {
        SoftenerSettings.Year asFound = found.setup().year(duty);
        boolean served = isServed(found.setup(), duty);
        List<Unit> units = units(found, target, duty, served, Slack.ASSUMED);
        SoftenerSettings end = applied(found.setup(), units);
        if (!isServed(end, duty)) {
            List<Unit> exact = units(found, target, duty, served, Slack.NONE);
            SoftenerSettings other = applied(found.setup(), exact);
            if (other.year(duty).totals().hardDays() < end.year(duty).totals().hardDays() - ASSUMED_SAME_HARD_DAYS) {
                units = exact;
            }
        }
        Walk walk = new Walk(asFound, duty, cost);
        units.stream().filter(Unit::protects).forEach(walk::take);
        List<Unit> rest = units.stream().filter(unit -> !unit.protects()).toList();
        if (!rest.isEmpty() && walk.isWorthIt(rest)) {
            rest.forEach(walk::takeIfBetter);
            walk.takeWaitingIfServed();
        }
        CycleReview.slowRinse(walk.setup(), duty).ifPresent(change -> walk.take(Unit.of(List.of(change))));
        return new Review(walk.findings, asFound, walk.year);
    }

    private static List<Unit> units(ExistingSoftener found, SetRight target, DesignConditions duty, boolean served, Slack slack) {
        List<Unit> units = new ArrayList<>();
        units.add(Unit.of(CycleReview.backwash(found, duty)));
        CycleReview.hour(found, duty).ifPresent(change -> units.add(Unit.of(List.of(change))));
        SaltReview salt = SaltReview.of(found, target, duty, slack);
        if (found.policy().byClock()) {
            units.add(new Unit(salt.changes(), ClockReview.changes(found, target, duty, served), setup -> setup));
        } else {
            MeterReview meter = new MeterReview(found, target, duty, slack, salt);
            meter.hardness().ifPresent(change -> units.add(Unit.of(List.of(change))));
            meter.override().ifPresent(change -> units.add(Unit.of(List.of(change))));
            List<Change> capacity = new ArrayList<>();
            meter.capacity().ifPresent(capacity::add);
            boolean together = served && salt.doseChanges();
            meter.reserve().ifPresent(change -> {
                if (together && change.set() < change.shouldBe()) {
                    capacity.add(change);
                } else {
                    units.add(Unit.of(List.of(change)));
                }
            });
            units.add(new Unit(salt.changes(), capacity, meter.withDose().orElse(setup -> setup)));
        }
        units.removeIf(Unit::isEmpty);
        units.sort(Comparator.comparing(Unit::first));
        return units;
    }

    private static SoftenerSettings applied(SoftenerSettings setup, List<Unit> units) {
        SoftenerSettings applied = setup;
        for (Unit unit : units) {
            applied = unit.applied(applied);
        }
        return applied;
    }

    private static boolean isServed(SoftenerSettings setup, DesignConditions duty) {
        return duty.isServed(setup.policy(), setup.regeneration(duty.water().temperatureCelsius()));
    }

    /** The softener with a drain flow that suits its bed: the existing one, or the right one where that is wrong. */
    public static Softener withRightDrain(ExistingSoftener found, DesignConditions duty) {
        Softener softener = found.setup().softener();
        return CycleReview.backwash(found, duty).stream().findFirst()
                .map(change -> softener.withDrain(OptionalDouble.of(change.shouldBe()))).orElse(softener);
    }

    /**
     * Changes that belong together.
     *
     * @param salt dose and refill
     * @param others what goes with them
     * @param unread what is set with the dose, although its present setting is not known
     */
    private record Unit(List<Change> salt, List<Change> others, UnaryOperator<SoftenerSettings> unread) {

        static Unit of(List<Change> changes) {
            return new Unit(List.of(), changes, setup -> setup);
        }

        List<Change> changes() {
            List<Change> changes = new ArrayList<>(salt);
            changes.addAll(others);
            return changes;
        }

        boolean isEmpty() {
            return salt.isEmpty() && others.isEmpty();
        }

        boolean protects() {
            return changes().stream().anyMatch(Change::protects);
        }

        /** What it is for, and its place among those for the same. */
        int first() {
            return changes().stream().map(Change::code).mapToInt(code -> code.purpose().ordinal()
                    * Finding.Code.values().length + code.ordinal()).min().orElse(0);
        }

        SoftenerSettings applied(SoftenerSettings setup) {
            SoftenerSettings applied = salt.isEmpty() ? setup : unread.apply(setup);
            for (Change change : changes()) {
                applied = change.apply().apply(applied);
            }
            return applied;
        }

        /** Dose first, or its companion first. */
        List<List<Unit>> apart() {
            Unit one = new Unit(salt, List.of(), unread);
            Unit other = of(others);
            return salt.isEmpty() || others.isEmpty() ? List.of() : List.of(List.of(one, other), List.of(other, one));
        }
    }

    /** The path taken so far. */
    private static final class Walk {

        private final DesignConditions duty;
        private final RunningCost cost;
        private final List<Finding> findings = new ArrayList<>();
        private final List<Unit> waiting = new ArrayList<>();
        private SoftenerSettings.Year year;
        private int steps;

        Walk(SoftenerSettings.Year start, DesignConditions duty, RunningCost cost) {
            year = start;
            this.duty = duty;
            this.cost = cost;
        }

        SoftenerSettings setup() {
            return year.setup();
        }

        /** Whether all of them together save, or stop hard water that the standard does not allow. */
        boolean isWorthIt(List<Unit> units) {
            SoftenerSettings.Year end = Review.applied(setup(), units).year(duty);
            boolean saves = cost(end) < cost(year) * (1 - DoseChoice.ASSUMED_EQUAL_COST_SHARE);
            return saves || softensFreely(end) || !isServed(setup(), duty) && (isSofter(end) || isServed(end.setup(), duty));
        }

        /** Less hard water while it regenerates, at no cost. */
        private boolean softensFreely(SoftenerSettings.Year end) {
            return !costsMore(year, end) && end.hardWhileRegeneratingLitres() < year.hardWhileRegeneratingLitres()
                    && end.totals().hardDays() < year.totals().hardDays() + ASSUMED_SAME_HARD_DAYS;
        }

        private boolean isSofter(SoftenerSettings.Year end) {
            return end.totals().hardDays() < year.totals().hardDays() - ASSUMED_SAME_HARD_DAYS;
        }

        void take(Unit unit) {
            go(List.of(unit), Review.applied(setup(), List.of(unit)).year(duty));
        }

        void takeIfBetter(Unit unit) {
            for (List<Unit> order : waiting.isEmpty() ? unit.apart() : List.<List<Unit>>of()) {
                SoftenerSettings.Year between = order.get(0).applied(setup()).year(duty);
                SoftenerSettings.Year end = order.get(1).applied(between.setup()).year(duty);
                if (isFree(year, between) && isFree(between, end)) {
                    go(List.of(order.get(0)), between);
                    go(List.of(order.get(1)), end);
                    return;
                }
            }
            waiting.add(unit);
            SoftenerSettings.Year next = Review.applied(setup(), waiting).year(duty);
            if (!costsMore(year, next) || isSofter(next)) {
                go(waiting, next);
                waiting.clear();
            }
        }

        /** What costs more and stops no hard water in expectation is still right where the standard is kept only with it. */
        void takeWaitingIfServed() {
            if (!waiting.isEmpty() && !isServed(setup(), duty) && isServed(Review.applied(setup(), waiting), duty)) {
                go(waiting, Review.applied(setup(), waiting).year(duty));
            }
        }

        /** Whether neither cost nor hard days grow. */
        private boolean isFree(SoftenerSettings.Year from, SoftenerSettings.Year to) {
            return !costsMore(from, to) && to.totals().hardDays() < from.totals().hardDays() + ASSUMED_SAME_HARD_DAYS;
        }

        private boolean costsMore(SoftenerSettings.Year from, SoftenerSettings.Year to) {
            return cost(to) > cost(from) * (1 + Slack.ROUNDING_SHARE);
        }

        private double cost(SoftenerSettings.Year of) {
            return cost.ofYear(of.totals());
        }

        private void go(List<Unit> units, SoftenerSettings.Year next) {
            steps++;
            SoftenerSettings.Difference difference = year.minus(next);
            for (Change change : units.stream().flatMap(unit -> unit.changes().stream()).sorted(Comparator.comparing(change ->
                    change.code().purpose())).toList()) {
                findings.add(new Finding(change.code(), change.setting(), change.set(), change.shouldBe(), steps, difference));
                difference = SoftenerSettings.Difference.NONE;
            }
            year = next;
        }
    }
}
