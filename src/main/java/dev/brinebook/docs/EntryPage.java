// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.docs;

import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.WireNames;
import dev.brinebook.contract.Examples;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.text.Message;
import java.util.Arrays;
import java.util.List;

/**
 * The content of the entry page: a first call for each kind of caller, and where everything is.
 *
 * @param storefront first call of a shop
 * @param crm first call of those who look after customers
 * @param agent first call of a chat agent
 * @param operations every operation
 * @param reasons why a number may not exist
 * @param modelVersion version of formulas and data
 */
record EntryPage(FirstCall storefront, FirstCall crm, FirstCall agent, List<Operation<?, ?>> operations,
        List<Reason> reasons, String modelVersion) {

    /** A call to type, and its real answer, shortened. */
    record FirstCall(Snippets call, String answer) {
    }

    /** Why there is no number, by its code. */
    record Reason(String code, String sentence) {
    }

    private static final String END_OF_EVENT = "END:VEVENT";

    static EntryPage of(List<Operation<?, ?>> operations) {
        Operation<?, ?> size = operation(operations, "sizeSoftener");
        Operation<?, ?> schedule = operation(operations, "scheduleRegeneration");
        Operation<?, ?> convert = operation(operations, "convertHardness");
        AnswerForm<?> calendar = schedule.forms().stream().filter(form -> form.mediaType().equals("text/calendar"))
                .findFirst().orElseThrow();
        return new EntryPage(
                new FirstCall(Snippets.of(Call.post(size, Excerpt.lines(Examples.text(size, "holiday-cabin", "request")))),
                        Excerpt.of(Examples.text(size, "holiday-cabin", "response"), "summary", "choice", "why")),
                new FirstCall(Snippets.of(Call.post(schedule, Excerpt.lines(Examples.text(schedule, calendar.example(), "request")),
                        calendar.mediaType())), firstEvent(Examples.text(schedule, calendar))),
                new FirstCall(Snippets.of(Call.get(convert)),
                        Excerpt.of(Examples.text(convert, "us", "response"), "summary", "classes")),
                operations, Arrays.stream(NoResultReason.values())
                .map(reason -> new Reason(WireNames.of(reason), Message.of(reason).toString())).toList(), ModelVersion.CURRENT);
    }

    private static String firstEvent(String calendar) {
        return calendar.substring(0, calendar.indexOf(END_OF_EVENT) + END_OF_EVENT.length()).replace("\r\n", "\n");
    }

    private static Operation<?, ?> operation(List<Operation<?, ?>> operations, String id) {
        return operations.stream().filter(operation -> operation.id().equals(id)).findFirst().orElseThrow();
    }
}
