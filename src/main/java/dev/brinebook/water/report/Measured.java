// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.water.report.PrintedResult.Qualifier;
import java.util.OptionalDouble;

/**
 * A result in the unit and form that is calculated with.
 *
 * @param printed the line of the report
 * @param form the form that it was read in
 * @param estimate value and standard uncertainty; 0 where nothing was found
 * @param limit the detection limit where nothing was found, or the least where the scale ended; none for a plain value
 */
public record Measured(PrintedResult printed, PrintedForm form, Estimate estimate, OptionalDouble limit) {

    private static final double UNIFORM_FROM_ZERO = Math.sqrt(3);
    private static final double ESTIMATED_FACTOR = 2;
    private static final double LEAST_PH = 2;
    /** No test is better than this share of the highest value: an uncertainty below it is taken as this. */
    private static final double ASSUMED_LEAST_SHARE = 1e-7;

    /** The line read in its form, which must take its unit. */
    static Measured of(PrintedResult printed, PrintedForm form) {
        PrintedResult.Reading reading = printed.reading();
        double value = form.normalised(reading.value(), reading.unit());
        if (printed.isNoneFound()) {
            return new Measured(printed, form, new Estimate(0, 0), OptionalDouble.empty());
        }
        return switch (reading.qualifier()) {
            case BELOW -> form.becomes().startsAtZero()
                    ? new Measured(printed, form, new Estimate(0, Math.abs(value) / UNIFORM_FROM_ZERO), OptionalDouble.of(value))
                    : new Measured(printed, form, new Estimate(value, uncertainty(printed, form, value)), OptionalDouble.of(value));
            case ABOVE -> new Measured(printed, form, new Estimate(value, uncertainty(printed, form, value)), OptionalDouble.of(value));
            case ESTIMATED -> new Measured(printed, form, new Estimate(value, ESTIMATED_FACTOR * uncertainty(printed, form, value)),
                    OptionalDouble.empty());
            case PRESENT -> new Measured(printed, form, new Estimate(1, 0), OptionalDouble.empty());
            default -> new Measured(printed, form, new Estimate(value, uncertainty(printed, form, value)), OptionalDouble.empty());
        };
    }

    private static double uncertainty(PrintedResult printed, PrintedForm form, double value) {
        ReportUnit unit = printed.reading().unit();
        double one = form.normalised(1, unit) - form.normalised(0, unit);
        PrintedResult.Testing testing = printed.testing();
        double stated = testing.expanded().isPresent() ? testing.expanded().getAsDouble() * one / 2
                : testing.method().standardUncertainty(form.becomes(), value, testing.step() * one);
        return Math.max(stated, leastUncertainty(form.becomes()));
    }

    /** The least standard uncertainty that any test of a parameter is believed to have. */
    static double leastUncertainty(Parameter parameter) {
        return ASSUMED_LEAST_SHARE * parameter.highest();
    }

    public Parameter parameter() {
        return form.becomes();
    }

    /** Whether its value is one: not the end of a scale. */
    boolean isValue() {
        return printed.reading().qualifier() != Qualifier.ABOVE
                && (printed.reading().qualifier() != Qualifier.BELOW || parameter().startsAtZero());
    }

    /** Whether the report does not say as what it is printed, and more than one form is usual. */
    public boolean isFormAssumed() {
        return printed.reading().form() == null && PrintedForm.isAmbiguous(printed.parameter(), printed.reading().unit());
    }

    /** Whether no water has such a value: its unit or its digits are wrong. */
    public boolean isImpossible() {
        double value = Math.max(estimate.value(), limit.orElse(0));
        boolean negative = Math.min(estimate.value(), limit.orElse(0)) < 0 && parameter() != Parameter.TEMPERATURE;
        return negative || !(value <= parameter().highest()) || parameter() == Parameter.PH && !(value >= LEAST_PH);
    }
}
