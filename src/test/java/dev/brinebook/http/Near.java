// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import org.hamcrest.Description;
import org.hamcrest.Matcher;
import org.hamcrest.TypeSafeMatcher;

/** Matches a number of a JSON answer, whole or decimal, near an expected one. */
public final class Near extends TypeSafeMatcher<Number> {

    private final double expected;
    private final double tolerance;
    private final String why;

    private Near(double expected, double tolerance, String why) {
        this.expected = expected;
        this.tolerance = tolerance;
        this.why = why;
    }

    /** A number within {@code tolerance} of {@code expected}; {@code why} states where that comes from. */
    public static Matcher<Number> near(double expected, double tolerance, String why) {
        return new Near(expected, tolerance, why);
    }

    /** Just the number {@code expected}. */
    public static Matcher<Number> exactly(double expected) {
        return new Near(expected, 0, "");
    }

    @Override
    protected boolean matchesSafely(Number actual) {
        return Math.abs(actual.doubleValue() - expected) <= tolerance;
    }

    @Override
    public void describeTo(Description description) {
        description.appendText(expected + " give or take " + tolerance + " " + why);
    }
}
