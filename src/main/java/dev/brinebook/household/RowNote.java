// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.text.Localizable;
import java.util.Objects;

/**
 * What was done about a row of readings that could not be taken as it was.
 *
 * @param row its place in the input
 * @param code what was wrong and what was done
 */
public record RowNote(int row, Code code) {

    public RowNote {
        Objects.requireNonNull(code, "code");
    }

    /** What becomes of a row. */
    public enum Action {
        /** Used, with the change reported. */
        REPAIRED,
        /** Left out. */
        SKIPPED,
        /** Taken, but what passed since the reading before is not known. */
        USE_LOST
    }

    /** What can be wrong with a row. */
    public enum Code implements Localizable {
        WRONG_CELLS(Action.SKIPPED),
        UNREADABLE_TIME(Action.SKIPPED),
        DECIMAL_COMMA(Action.SKIPPED),
        UNREADABLE_VALUE(Action.SKIPPED),
        VALUE_OUT_OF_RANGE(Action.SKIPPED),
        NONEXISTENT_TIME(Action.SKIPPED),
        AMBIGUOUS_TIME_EARLIER(Action.REPAIRED),
        AMBIGUOUS_TIME_LATER(Action.REPAIRED),
        NEWEST_FIRST(Action.REPAIRED),
        OUT_OF_ORDER(Action.REPAIRED),
        DUPLICATE(Action.REPAIRED),
        CONFLICT(Action.SKIPPED),
        ABOVE_ROLLOVER(Action.SKIPPED),
        ROLLOVER(Action.REPAIRED),
        REGISTER_DIPS(Action.SKIPPED),
        REGISTER_LEAPS(Action.SKIPPED),
        METER_CHANGED(Action.USE_LOST),
        TOO_MUCH_DRAWN(Action.USE_LOST),
        VOLUME_TOO_LARGE(Action.SKIPPED),
        BRIDGED(Action.REPAIRED),
        DAY_TOO_LARGE(Action.SKIPPED);

        private final Action action;

        Code(Action action) {
            this.action = action;

        }

        public Action action() {
            return action;
        }

        @Override
        public String textId() {
            return Localizable.idOf("rowNote", this);
        }
    }
}
