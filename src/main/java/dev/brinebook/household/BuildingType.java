// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;

/** A kind of building, with its constants of the peak flow formula. Source: [DIN-1988-300]. */
public enum BuildingType {
    DWELLING(1.48, 0.19, 0.94), HOTEL(0.70, 0.48, 0.13), SCHOOL_OR_OFFICE(0.91, 0.31, 0.38);

    public static final double MIN_DESIGN_LITRES_PER_SECOND = 0.2;
    public static final double MAX_DESIGN_LITRES_PER_SECOND = 500;

    private final double a;
    private final double b;
    private final double c;

    BuildingType(double a, double b, double c) {
        this.a = a;
        this.b = b;
        this.c = c;
    }

    /**
     * Peak flow of a building.
     *
     * <pre>
     * V_S = a (sum V_R)^b - c, at most sum V_R
     * </pre>
     *
     * <p>V_S peak flow, L/s; V_R design flow of each connection, L/s; a, b, c constants of the building.
     * Validity: sum of design flows from 0.2 to 500 L/s; outside there is no answer.
     * Source: [DIN-1988-300] peak flow.
     * Deviation: the rule that a dwelling never takes more than its two largest fixtures at once is not applied, as the
     * fixtures are not given by dwelling.
     */
    public OptionalResult peakLitresPerSecond(double designLitresPerSecond) {
        Guard.notNegative(designLitresPerSecond, "designLitresPerSecond");
        if (!Guard.isWithin(designLitresPerSecond, MIN_DESIGN_LITRES_PER_SECOND, Double.MAX_VALUE)) {
            return OptionalResult.none(NoResultReason.BELOW_DESIGN_FLOWS);
        }
        if (!Guard.isWithin(designLitresPerSecond, 0, MAX_DESIGN_LITRES_PER_SECOND)) {
            return OptionalResult.none(NoResultReason.ABOVE_DESIGN_FLOWS);
        }
        return OptionalResult.of(Math.min(designLitresPerSecond, a * StrictMath.pow(designLitresPerSecond, b) - c));
    }
}
