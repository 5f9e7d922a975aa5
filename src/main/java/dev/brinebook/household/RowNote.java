package dev.brinebook.household;

import dev.brinebook.wording.Worded;
import java.util.Objects;

/**
 * What was done about a row of readings that could not be taken as it was.
 *
 * @param row where it stands
 * @param code what was wrong and what was done
 */
public record RowNote(int row, Code code) {

    public RowNote {
        Objects.requireNonNull(code, "code");
    }

    /** What becomes of a row. */
    public enum Action {
        /** Taken, with the change told. */
        REPAIRED,
        /** Left out. */
        SKIPPED,
        /** Taken, but what passed since the reading before is not known. */
        USE_LOST
    }

    /** What can be wrong with a row. */
    public enum Code implements Worded {
        WRONG_CELLS(Action.SKIPPED, "the row has another number of cells than the header"),
        UNREADABLE_TIME(Action.SKIPPED, "the time is not written as ISO 8601 has it, such as 2026-03-01, 2026-03-01T14:00 or"
                + " 2026-03-01T14:00+01:00"),
        DECIMAL_COMMA(Action.SKIPPED, "the value has a comma: the decimal sign is a point, and thousands have no sign"),
        UNREADABLE_VALUE(Action.SKIPPED, "the value is not a plain decimal number"),
        VALUE_OUT_OF_RANGE(Action.SKIPPED, "the value is below 0 or above 1,000,000,000"),
        NONEXISTENT_TIME(Action.SKIPPED, "the clock went forward and never showed this time"),
        AMBIGUOUS_TIME_EARLIER(Action.REPAIRED, "the clock showed this time twice: taken as the earlier"),
        AMBIGUOUS_TIME_LATER(Action.REPAIRED, "the clock showed this time twice: taken as the later, because of the row"
                + " before"),
        NEWEST_FIRST(Action.REPAIRED, "the rows run from the newest to the oldest: all were turned round"),
        OUT_OF_ORDER(Action.REPAIRED, "an earlier time than that of a row before: moved to its place"),
        DUPLICATE(Action.REPAIRED, "the same time and value as another row: merged with it"),
        CONFLICT(Action.SKIPPED, "another row has the same time and another value: neither is taken"),
        ABOVE_ROLLOVER(Action.SKIPPED, "the value is not below the one at which the register starts again"),
        ROLLOVER(Action.REPAIRED, "the register started again from 0"),
        REGISTER_DIPS(Action.SKIPPED, "the register is lower than before, and the next reading is not"),
        REGISTER_LEAPS(Action.SKIPPED, "the register is higher than a household can draw, and the next reading is not"),
        METER_CHANGED(Action.USE_LOST, "the register fell, and not by starting again: another meter, or set back"),
        TOO_MUCH_DRAWN(Action.USE_LOST, "more than a household can draw since the reading before"),
        VOLUME_TOO_LARGE(Action.SKIPPED, "the volume is more than a household can draw in the interval"),
        BRIDGED(Action.REPAIRED, "readings before this one are missing: what passed is known and is spread evenly over"
                + " the time"),
        DAY_TOO_LARGE(Action.SKIPPED, "the day of this row has more than 11,888 gal: the day counts as missing",
                "the day of this row has more than 45,000 L: the day counts as missing");

        private final Action action;
        private final String sentence;
        private final String metricSentence;

        Code(Action action, String sentence) {
            this(action, sentence, sentence);
        }

        Code(Action action, String sentence, String metricSentence) {
            this.action = action;
            this.sentence = sentence;
            this.metricSentence = metricSentence;
        }

        public Action action() {
            return action;
        }

        /** One plain sentence, without a full stop. */
        @Override
        public String words() {
            return sentence;
        }

        @Override
        public String metricWords() {
            return metricSentence;
        }
    }
}
