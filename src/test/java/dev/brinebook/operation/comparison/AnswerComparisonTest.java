// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.api.AnswerValues.Value;
import dev.brinebook.model.ModelChange;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which changes of the model cause a difference, by what each makes of the first answer alone. */
class AnswerComparisonTest {

    private static final List<ModelChange> BOTH = List.of(ModelChange.SALT_STEPS_OF_NEW_BEDS, ModelChange.BRINE_BY_WEIGHT);

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # before | after | with the first alone | with the second alone | causes                                  | together
            1        | 2     | 2                    | 1                     | salt-steps-of-new-beds                  | false
            1        | 2     | 1                    | 2                     | brine-by-weight                         | false
            1        | 2     | 2                    | 2                     | salt-steps-of-new-beds, brine-by-weight | false
            1        | 4     | 2                    | 3                     | salt-steps-of-new-beds, brine-by-weight | true
            1        | 4     | 1                    | 1                     | salt-steps-of-new-beds, brine-by-weight | true
            1        | 4     | 2                    | 1                     | salt-steps-of-new-beds, brine-by-weight | true
            1        | 4     | 2                    | 4                     | brine-by-weight                         | false
            """)
    void namesTheChangesThatMoveAValue(String before, String after, String first, String second, String causes, boolean together) {
        AnswerComparison compared = AnswerComparison.of(one(before), one(after), false, BOTH,
                change -> one(change == BOTH.get(0) ? first : second));
        ValueDifference difference = compared.differences().get(0);
        assertEquals(causes, String.join(", ", difference.causes()));
        assertEquals(together, difference.together());
        assertEquals(new BigDecimal(after).subtract(new BigDecimal(before)), difference.change());
        ValueDifference back = AnswerComparison.of(one(after), one(before), true, BOTH,
                change -> one(change == BOTH.get(0) ? first : second)).differences().get(0);
        assertEquals(difference.causes(), back.causes(), "in both directions");
    }

    @Test
    void triesNoChangeWhereNothingDiffers() {
        AnswerComparison compared = AnswerComparison.of(one("1.0"), one("1"), false, BOTH, change -> {
            throw new AssertionError("tried");
        });
        assertEquals(List.of(), compared.differences());
        assertEquals(1, compared.equalNumbers());
    }

    @Test
    void listsWhatOnlyOneAnswerHas() {
        Map<String, Value> code = Map.of("/code", new Value("/code", null, null, "well", null));
        ValueDifference gone = AnswerComparison.of(code, Map.of(), false, List.of(), change -> code).differences().get(0);
        assertEquals("/code well null", gone.pointer() + " " + gone.before().code() + " " + gone.after());
        ValueDifference come = AnswerComparison.of(Map.of(), code, false, List.of(), change -> code).differences().get(0);
        assertEquals("/code null well", come.pointer() + " " + come.before() + " " + come.after().code());
    }

    private static Map<String, Value> one(String number) {
        return Map.of("/number", new Value("/number", new BigDecimal(number), "kg", null, null));
    }
}
