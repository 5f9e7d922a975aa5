// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.upkeep;

import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.household.Days;
import dev.brinebook.sheet.PageSize;
import dev.brinebook.sheet.PlanHead;
import dev.brinebook.sheet.PlanWords;
import dev.brinebook.sheet.Sheet;
import dev.brinebook.text.Joint;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import java.util.List;
import java.util.Map;

/**
 * The plan as a sheet for the customer.
 *
 * @param say fixed words
 * @param head its foot
 * @param description the summary
 * @param tasks what to do
 * @param cautions cautions to show
 */
record UpkeepSheet(Map<String, PlanWords> say, PlanHead head, Message description, List<Task> tasks, List<Message> cautions) {

    /** As many dates of a task as a line has room for. */
    private static final int MOST_DATES = 3;
    /** From here on an interval is said in years. */
    private static final int DAYS_OF_TWO_YEARS = 2 * Days.PER_YEAR;

    /**
     * A line.
     *
     * @param at JSON pointer of the interval in the answer
     * @param often the interval, null where a trigger alone makes it due
     * @param dates the next ones
     */
    record Task(String at, Message task, Message trigger, Message often, Message dates) {
    }

    static String xhtml(UpkeepAnswer answer, AnswerUnits units, String modelVersion, Language language) {
        List<UpkeepLine> lines = answer.tasks();
        return Sheet.xhtml("upkeep", units == AnswerUnits.METRIC ? PageSize.A4 : PageSize.LETTER, new UpkeepSheet(PlanWords.all(),
                PlanHead.of(answer.from(), modelVersion), answer.summary(),
                lines.stream().map(line -> task(lines.indexOf(line), line)).toList(),
                answer.cautions().stream().filter(one -> one.inFront()).map(one -> one.message()).toList()), language);
    }

    private static Task task(int i, UpkeepLine line) {
        Message dates = line.dates().isEmpty() ? Message.of("planBand.noDate") : Message.joined(Joint.SEMICOLON, line.dates().stream()
                .limit(MOST_DATES).map(date -> Message.of("pattern.value", date)).toList());
        return new Task("/tasks/" + i + "/everyDays", line.task(), line.trigger(),
                line.everyDays() == null ? null : often(line.everyDays()), dates);
    }

    private static Message often(int days) {
        return days < DAYS_OF_TWO_YEARS ? Message.of("settingFinding.days", Text.whole(days))
                : Message.of("planBand.years", Text.years((double) days / Days.PER_YEAR));
    }
}
