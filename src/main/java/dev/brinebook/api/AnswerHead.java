// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.text.Message;
import java.util.List;

/**
 * What every answer begins and ends with for people.
 *
 * @param summary what to quote
 * @param cautions what to show with the numbers
 * @param assumptions what each input came to; none where the answer has no room for them
 */
public record AnswerHead(Message summary, List<CautionAnswer> cautions, List<Resolved> assumptions) {

    /** That of an answer of any operation. */
    @SuppressWarnings("unchecked")
    public static AnswerHead of(Record answer) {
        RecordShape shape = RecordShape.of(answer.getClass());
        Object[] values = shape.values(answer);
        int assumptions = shape.names().indexOf("assumptions");
        return new AnswerHead((Message) values[shape.names().indexOf("summary")],
                (List<CautionAnswer>) values[shape.names().indexOf("cautions")],
                assumptions < 0 ? List.of() : (List<Resolved>) values[assumptions]);
    }
}
