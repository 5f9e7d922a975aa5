// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.text.Message;
import java.util.List;

/**
 * What every answer begins and ends with for people.
 *
 * @param summary what to quote
 * @param cautions what to show with the numbers
 */
public record AnswerHead(Message summary, List<CautionAnswer> cautions) {

    /** That of an answer of any operation. */
    @SuppressWarnings("unchecked")
    public static AnswerHead of(Record answer) {
        RecordShape shape = RecordShape.of(answer.getClass());
        Object[] values = shape.values(answer);
        return new AnswerHead((Message) values[shape.names().indexOf("summary")],
                (List<CautionAnswer>) values[shape.names().indexOf("cautions")]);
    }
}
