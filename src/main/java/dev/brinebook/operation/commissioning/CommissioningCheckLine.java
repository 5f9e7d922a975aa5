// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.commissioning.CommissioningCheck;
import dev.brinebook.commissioning.PassBand;
import dev.brinebook.commissioning.ReadingOutcome;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.Optional;

@SchemaDescription("A check: how it is read, what sound equipment shows, and what was read.")
public record CommissioningCheckLine(
        @Property("The check.") CommissioningCheck check,
        @Property(value = "Its name.", example = "\"Backwash flow\"") Message name,
        @Property(value = "How to read it.", example = "\"Catch the drain in a bucket after a minute of backwash.\"") Message how,
        @Property(value = "Unit of its numbers.", optional = CommissioningCheckLine.YES_NO, example = "\"gpm\"") ReadingUnit unit,
        @Basis(formula = "formula.commissioning.expected", source = "CP-CYCLE")
        @Property(value = "What it should read.", optional = CommissioningCheckLine.YES_NO, example = "3") BigDecimal expected,
        @Basis(formula = "formula.commissioning.passBand", source = "GUM")
        @Property(value = "It passes from here on.", optional = CommissioningCheckLine.OPEN, example = "2.64") BigDecimal passFrom,
        @Basis(formula = "formula.commissioning.passBand", source = "GUM")
        @Property(value = "It passes up to here.", optional = CommissioningCheckLine.OPEN, example = "3.36") BigDecimal passTo,
        @Basis(formula = "formula.commissioning.failLimit", source = "OWN-ASSUMPTION")
        @Property(value = "It fails below this. Between this and passFrom, measure again.", optional = CommissioningCheckLine.OPEN,
                example = "2.46") BigDecimal failBelow,
        @Basis(formula = "formula.commissioning.failLimit", source = "OWN-ASSUMPTION")
        @Property(value = "It fails above this. Between passTo and this, measure again.", optional = CommissioningCheckLine.OPEN,
                example = "3.54") BigDecimal failAbove,
        @Basis(formula = "formula.commissioning.readingUncertainty", source = "GUM")
        @Property(value = "Standard uncertainty of the reading, by what is stated of it or by the usual instrument.",
                optional = CommissioningCheckLine.YES_NO, min = 0, example = "0.053") BigDecimal readingUncertainty,
        @Property(value = "Whether the flows that the band rests on are given. Where not, a reading outside asks for them.",
                optional = CommissioningCheckLine.YES_NO, example = "true") Boolean flowsGiven,
        @Property(value = "What a reading below the band means, or a no.", optional = "where less is never wrong",
                example = "\"The drain is restricted.\"") Message whenLow,
        @Property(value = "What a reading above the band means.", optional = "where more is never wrong",
                example = "\"The flow control is missing.\"") Message whenHigh,
        @Basis
        @Property(value = "What was read, in the same unit.", optional = CommissioningCheckLine.NOT_READ, example = "2.9")
        BigDecimal reading,
        @Property(value = "The verdict on it.", optional = CommissioningCheckLine.NOT_READ, example = "\"pass\"")
        ReadingOutcome.Verdict verdict,
        @Property(value = "Why.", optional = CommissioningCheckLine.NOT_READ, example = "\"within\"") ReadingOutcome outcome,
        @Property(value = "The reason in sentences, with what to do.", optional = CommissioningCheckLine.NOT_READ,
                example = "\"The reading is inside the band.\"") Message reason) {

    static final String YES_NO = "for a check of yes or no";
    static final String OPEN = "for a check of yes or no, or where the band has no such end";
    static final String NOT_READ = "when there is no reading";

    /** A check without its reading. */
    static CommissioningCheckLine of(CommissioningCheck check, PassBand band, double uncertainty, boolean known, ReadingUnit unit) {
        return new CommissioningCheckLine(check, Message.of(check), check.how(), unit, number(band.expected(), unit),
                number(band.lowPass(), unit), number(band.highPass(), unit), number(band.lowFail(), unit), number(band.highFail(), unit),
                number(uncertainty, unit), known, check.low().orElse(null), check.high().orElse(null), null, null, null, null);
    }

    /** A check of yes or no, without its answer. */
    static CommissioningCheckLine ofYesNo(CommissioningCheck check) {
        return new CommissioningCheckLine(check, Message.of(check), check.how(), null, null, null, null, null, null, null, null,
                check.low().orElse(null), null, null, null, null, null);
    }

    /** The same with what was read, null for a yes or no, what that comes to, and a remedy in numbers where there is one. */
    CommissioningCheckLine read(Double base, ReadingOutcome to, Optional<Message> remedy) {
        return new CommissioningCheckLine(check, name, how, unit, expected, passFrom, passTo, failBelow, failAbove, readingUncertainty,
                flowsGiven, whenLow, whenHigh, base == null ? null : number(base, unit), to.verdict(), to,
                remedy.map(more -> Message.sentences(reason(to), more)).orElseGet(() -> reason(to)));
    }

    private Message reason(ReadingOutcome to) {
        return switch (to) {
            case BELOW, DENIED -> whenLow == null ? Message.of(to) : Message.sentences(Message.of(to), whenLow);
            case ABOVE -> whenHigh == null ? Message.of(to) : Message.sentences(Message.of(to), whenHigh);
            default -> Message.of(to);
        };
    }

    private static BigDecimal number(double base, ReadingUnit unit) {
        return Double.isInfinite(base) ? null : Rounding.answer(unit.fromBase(base));
    }
}
