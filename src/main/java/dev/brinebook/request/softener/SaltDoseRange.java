// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Checker;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.Salt;
import dev.brinebook.text.Message;
import java.util.List;

/** Checks salt doses against the range of the capacity tables for their salt, and reports the range in the unit of the request. */
public final class SaltDoseRange {

    private SaltDoseRange() {
    }

    /** Reports a dose at {@code at} that the tables do not cover, in place of what the wider range of any salt said of it. */
    public static void check(SaltDoseQuantity dose, Salt salt, Violations at) {
        check(dose, CapacityTable.minSaltDoseGramsPerLitre(salt), CapacityTable.maxSaltDoseGramsPerLitre(salt), at);
    }

    /** Reports a dose outside a range in g/L in the same way. */
    public static void check(SaltDoseQuantity dose, double min, double max, Violations at) {
        if (dose == null || dose.value() == null || dose.unit() == null || Guard.isWithin(dose.inBase(), min, max)) {
            return;
        }
        at.at("value").withdraw();
        Message allowed = Checker.allowed(dose.unit(), min, max);
        at.add(new Violation(at.pointer(), Code.OUT_OF_RANGE, Message.of("problem.softener.mustSaltGiven", allowed,
                received(dose)), List.of(allowed), null, Checker.echo(dose.value())));
    }

    /** A quantity as it came. */
    public static Message received(Quantity<?> quantity) {
        return Message.of("pattern.value", Checker.received(quantity.value(), quantity.unit().symbol()));
    }
}
