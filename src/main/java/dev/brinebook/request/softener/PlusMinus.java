// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

/** How far a reading may be off either way, as a caller states it: more than nothing, and so little that the reading says something. */
public final class PlusMinus {

    /** Least of it as a share of the reading. */
    public static final double LEAST_SHARE = 1e-4;
    /** Most of it likewise. */
    public static final double MOST_SHARE = 0.25;

    private PlusMinus() {
    }

    /** Reports one that is too small or too large for its reading, both as given and complete. */
    public static void check(Quantity<?> given, Quantity<?> reading, double mostShare, String name, Violations at) {
        if (isWhole(given) && isWhole(reading)) {
            check(given.inBase(), reading.inBase(), mostShare, name, at);
        }
    }

    /** The same of a reading in its base unit. */
    static void check(Quantity<?> given, double reading, double mostShare, String name, Violations at) {
        if (isWhole(given)) {
            check(given.inBase(), reading, mostShare, name, at);
        }
    }

    /** The same for plain numbers; either may be null. */
    public static void check(BigDecimal given, BigDecimal reading, String name, Violations at) {
        if (given != null && reading != null) {
            check(given.doubleValue(), reading.doubleValue(), MOST_SHARE, name, at);
        }
    }

    private static void check(double given, double reading, double mostShare, String name, Violations at) {
        if (!(given >= LEAST_SHARE * reading && given <= mostShare * reading)) {
            at.add(name, Code.INCONSISTENT, Message.of("problem.field.plusMinusOfReading", Text.number(100 * LEAST_SHARE),
                    Text.number(100 * mostShare)));
        }
    }

    /** Whether a quantity is complete. */
    public static boolean isWhole(Quantity<?> quantity) {
        return quantity != null && quantity.value() != null && quantity.unit() != null;
    }
}
