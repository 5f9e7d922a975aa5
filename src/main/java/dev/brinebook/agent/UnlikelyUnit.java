// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.api.CautionAnswer;
import dev.brinebook.caution.Caution;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Asks whether a unit is right, in the place of an answer whose cautions doubt it: the same question from every tool. */
final class UnlikelyUnit {

    /** The argument that holds what the person confirmed. */
    static final String CONFIRMED = "confirmed";

    /** The unit that each caution doubts. */
    private static final Map<Caution, String> DOUBTED = new EnumMap<>(Map.of(Caution.HARDNESS_MAYBE_MG_PER_L, "hardnessUnit",
            Caution.HARDNESS_MAYBE_GRAINS, "hardnessUnit", Caution.RESIN_VOLUME_UNUSUAL, "sizeUnit"));

    private UnlikelyUnit() {
    }

    /** The question for the first unit of {@code answer} that is doubted and not among {@code confirmed}. */
    static Optional<Map<String, Object>> of(Record answer, List<String> confirmed) {
        return AnswerTree.list(answer, "/cautions").stream().map(CautionAnswer.class::cast)
                .filter(caution -> DOUBTED.containsKey(caution.code()) && !confirmed.contains(DOUBTED.get(caution.code())))
                .findFirst().map(caution -> ask(DOUBTED.get(caution.code()), caution.message().toString()));
    }

    /** The question whether {@code unit} is right. */
    static Map<String, Object> ask(String unit, String question) {
        return ToolResult.fault("Nothing was calculated. unitLooksWrong " + unit + ": " + question + " Ask the person. If it is right, "
                + "call again with " + CONFIRMED + " [\"" + unit + "\"]; else with the unit that the person says.\n");
    }
}
