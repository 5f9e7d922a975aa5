// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.guard.Guard;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One line of a report, as it is printed.
 *
 * @param parameter what was tested
 * @param reading the number and how it is written
 * @param testing how it was tested
 * @param sampling where and how the sample was taken
 */
public record PrintedResult(Parameter parameter, Reading reading, Testing testing, Sampling sampling) {

    /** What stands before a number, or instead of it. */
    public enum Qualifier {
        EQUAL,
        /** Not found; the number is the detection limit. */
        BELOW,
        /** At least the number: the top of a scale. */
        ABOVE,
        /** The laboratory calls it an estimate. */
        ESTIMATED,
        /** Not found, without a limit. */
        NOT_DETECTED,
        /** Bacteria: found or not found, without a count. */
        PRESENT,
        ABSENT,
        /** The laboratory calls the sample invalid: it says nothing. */
        INVALID
    }

    /** Where a sample was taken. */
    public enum Tap {
        RAW, SOFTENED, UNKNOWN
    }

    /**
     * A number as it is written.
     *
     * @param value the number, 0 where the qualifier stands for it
     * @param unit its unit
     * @param form as what it is printed; null where the report does not say
     * @param qualifier what stands before it
     */
    public record Reading(double value, ReportUnit unit, ReportForm form, Qualifier qualifier) {

        public Reading {
            Guard.finite(value, "value");
            Objects.requireNonNull(unit, "unit");
            Objects.requireNonNull(qualifier, "qualifier");
        }
    }

    /**
     * How a value was tested.
     *
     * @param method the method
     * @param expanded expanded uncertainty (k = 2), in the unit of the reading
     * @param step resolution of the test or the last digit printed, in the unit of the reading; 0 where neither is known
     */
    public record Testing(TestMethod method, OptionalDouble expanded, double step) {

        public Testing {
            Objects.requireNonNull(method, "method");
            Guard.notNegative(step, "step");
            expanded.ifPresent(given -> Guard.notNegative(given, "expanded"));
        }
    }

    /**
     * Where and how a sample was taken.
     *
     * @param tap before or after a softener
     * @param onSite whether it was tested at the tap, at once
     * @param firstDraw whether the water had stood in the pipe
     * @param origin which report it is of, and when it was taken
     */
    public record Sampling(Tap tap, boolean onSite, boolean firstDraw, Origin origin) {

        public Sampling {
            Objects.requireNonNull(tap, "tap");
            Objects.requireNonNull(origin, "origin");
        }
    }

    /**
     * Which report a result is of, and how old the sample was.
     *
     * @param report number of the report among several
     * @param date day on which the sample was taken
     * @param hoursHeld hours from taking the sample to its test
     */
    public record Origin(int report, Optional<LocalDate> date, OptionalDouble hoursHeld) {

        /** The only report, of which nothing else is known. */
        public static final Origin UNKNOWN = new Origin(1, Optional.empty(), OptionalDouble.empty());

        public Origin {
            hoursHeld.ifPresent(hours -> Guard.notNegative(hours, "hoursHeld"));
        }
    }

    public PrintedResult {
        Objects.requireNonNull(parameter, "parameter");
        Objects.requireNonNull(reading, "reading");
        Objects.requireNonNull(testing, "testing");
        Objects.requireNonNull(sampling, "sampling");
    }

    /** Whether the sample was tested later than its method allows; one tested at the tap was not. */
    boolean isTestedLate() {
        OptionalDouble most = NextTest.holdingHours(parameter);
        return !sampling.onSite() && most.isPresent() && sampling.origin().hoursHeld().orElse(0) > most.getAsDouble();
    }

    /** Whether it states no number: not detected without a limit, or only found or not found of what is no bacteria. */
    boolean isWithoutValue() {
        return switch (reading.qualifier()) {
            case NOT_DETECTED -> true;
            case PRESENT, ABSENT -> !parameter.isOfBacteria();
            default -> false;
        };
    }

    /** Whether no bacteria were found: absent, none counted, or less than the one that would be found. */
    boolean isNoneFound() {
        return parameter.isOfBacteria() && switch (reading.qualifier()) {
            case ABSENT -> true;
            case EQUAL -> reading.value() == 0;
            case BELOW -> reading.value() > 0 && reading.value() <= 1;
            default -> false;
        };
    }

    /** Whether it says nothing: called invalid, or bacteria that were not found in a sample that is too old to keep them. */
    boolean isInvalid() {
        boolean found = reading.qualifier() == Qualifier.PRESENT || reading.value() > 0 && reading.qualifier() != Qualifier.BELOW;
        return reading.qualifier() == Qualifier.INVALID || parameter.isOfBacteria() && !found && isTestedLate();
    }
}
