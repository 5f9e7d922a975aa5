// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.commissioning.CommissioningCheck;
import dev.brinebook.commissioning.CommissioningCheck.Kind;
import dev.brinebook.field.BrineStrength;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.OptionalDouble;

@SchemaDescription("What was read for a check: a number with its unit, or a yes or no.")
public record CommissioningReadingRequest(
        @Property(value = "The check.", required = true, example = "\"backwashFlow\"") CommissioningCheck check,
        @Property(value = "The number. Chloride and conductivity are given above those of the raw water, the tap's hardness above that "
                + "of the outlet. Only tapAboveOutlet may be below 0.", min = -CommissioningReadingRequest.MOST,
                max = CommissioningReadingRequest.MOST, example = "2.9",
                fallback = "none for a check of yes or no") BigDecimal value,
        @Property(value = "Its unit.", example = "\"gpm\"", fallback = "none for a check of yes or no") ReadingUnit unit,
        @Property(value = "How far the reading may be off either way, in its unit.", min = 0, aboveMin = true,
                max = CommissioningReadingRequest.MOST, example = "0.1", fallback = "that of the usual instrument") BigDecimal plusMinus,
        @Property(value = "The answer to a check of yes or no: whether it is as the check says.", example = "true",
                fallback = "none for a number") Boolean yes) implements Checked {

    static final double MOST = 100_000;

    @Override
    public void check(Violations at) {
        if (check == null) {
            return;
        }
        if (check.kind() == Kind.YES_NO) {
            checkYesNo(at);
            return;
        }
        if (yes != null) {
            at.add("yes", Code.INCONSISTENT, Message.of("problem.commissioning.isANumber"));
        }
        if (value == null && !at.at("value").here()) {
            at.add("value", Code.MISSING, Message.of("problem.commissioning.missingNumber"));
        }
        if (unit == null && !at.at("unit").here()) {
            at.add("unit", Code.MISSING, unitsAllowed());
        }
        if (unit != null && !unit.fits(check.kind())) {
            at.add("unit", Code.INCONSISTENT, unitsAllowed());
        }
        if (value != null && value.signum() < 0 && check != CommissioningCheck.TAP_ABOVE_OUTLET && !at.at("value").here()) {
            at.add("value", Code.OUT_OF_RANGE, Message.of("problem.commissioning.notBelowNothing"));
        }
        if (value != null && check.kind() == Kind.DEGREES && value.doubleValue() > BrineStrength.MAX_DEGREES) {
            at.add("value", Code.OUT_OF_RANGE, Message.of("problem.commissioning.mostDegrees", Text.whole(BrineStrength.MAX_DEGREES)));
        }
    }

    private void checkYesNo(Violations at) {
        if (yes == null && !at.at("yes").here()) {
            at.add("yes", Code.MISSING, Message.of("problem.commissioning.missingYes"));
        }
        if (value != null) {
            at.add("value", Code.INCONSISTENT, Message.of("problem.commissioning.isYesOrNo"));
        }
        if (unit != null) {
            at.add("unit", Code.INCONSISTENT, Message.of("problem.commissioning.isYesOrNo"));
        }
        if (plusMinus != null) {
            at.add("plusMinus", Code.INCONSISTENT, Message.of("problem.commissioning.isYesOrNo"));
        }
    }

    private Message unitsAllowed() {
        return Message.of("problem.commissioning.unitsAllowed", String.join(", ", ReadingUnit.symbols(check.kind())));
    }

    /** The number in its base unit. */
    double inBase() {
        return unit.toBase(value.doubleValue());
    }

    /** How far it may be off in its base unit, if stated. */
    OptionalDouble halfWidth() {
        return plusMinus == null ? OptionalDouble.empty() : OptionalDouble.of(unit.toBase(plusMinus.doubleValue()));
    }
}
