// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.verdict.RungAnswer;
import dev.brinebook.text.Localizable;

/** An option as a customer calls it, in a word or two. */
enum StepWord implements Localizable {
    NOW, SET_RIGHT, CONVERT, SECOND_TANK, LARGER_BED, COUNTER_CURRENT, MIXING_VALVE, HOT_WATER_ONLY, REPLACE;

    /** The word for an option that has figures. */
    static StepWord of(RungAnswer rung) {
        return switch (rung.step()) {
            case SET_RIGHT -> SET_RIGHT;
            case CONVERT -> CONVERT;
            case IMPROVE -> valueOf(rung.improvement().name());
            case REPLACE -> REPLACE;
            default -> NOW;
        };
    }

    /** What a text is chosen by. */
    String code() {
        return textId().substring(textId().indexOf('.') + 1);
    }

    @Override
    public String textId() {
        return Localizable.idOf("stepWord", this);
    }
}
