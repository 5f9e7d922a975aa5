// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.api.CautionAnswer;
import dev.brinebook.calendar.CalendarText;
import dev.brinebook.caution.Severity;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The events of a schedule's first policy as a calendar file (RFC 5545, with a name and description by RFC 7986). */
final class CalendarFile {

    static final String MEDIA_TYPE = CalendarText.MEDIA_TYPE;
    static final String DESCRIPTION = "A calendar file (RFC 5545) in UTF-8, for any calendar: all regenerations and salt purchases of "
            + "the first policy, bacteria tests of a private well, and services. A regeneration is at its hour in local time and lasts "
            + "as long as the cycle, in whole minutes. All other events, and regenerations that start immediately, are whole-day events. "
            + "No event blocks time or has an alarm. DTSTAMP is the first day at 00:00 UTC, because the service does not use the clock. "
            + "The UID of an event depends on the compensated hardness, household use, resin volume, seed, policy name, kind and date. "
            + "With another dose, reserve or hour, an event of the same kind and date replaces the first. To separate similar households "
            + "in one calendar, give their policies different names. More than "
            + ScheduleResults.MAX_DATES_OF_A_FILE + " regenerations and salt purchases are refused.";

    private CalendarFile() {
    }

    /**
     * The calendar file.
     *
     * @param answer the answer whose summary and cautions go with it
     */
    static String of(ScheduleResults foreseen, ScheduleAnswer answer, Language language) {
        CalendarEvents planned = CalendarEvents.of(foreseen);
        CalendarText.Head head = new CalendarText.Head("-//Brinebook//Regeneration schedule " + foreseen.given().model().version() + "//EN",
                Message.of("calendarFile.waterSoftener", planned.policy().quoted()).in(language),
                description(planned, answer).in(language), foreseen.firstDate());
        return CalendarText.of(head, planned.events().stream().map(event -> event(planned, event, language)).toList());
    }

    /** Named by household, policy, date and kind; the policy as it goes over the wire in every language. */
    private static CalendarText.Event event(CalendarEvents planned, CalendarEvents.Event event, Language language) {
        String name = String.join("\n", planned.household(), planned.policy().toString(), event.date().toString(), event.category().name());
        return new CalendarText.Event(name, event.date(), event.startHour(), event.minutes(),
                event.category().name().replace('_', ' ').toLowerCase(Locale.ROOT), event.summary().in(language),
                event.description().in(language));
    }

    /** The summary, what must be known of the salt, and the cautions that are more than a note. */
    private static Message description(CalendarEvents planned, ScheduleAnswer answer) {
        List<Message> sentences = new ArrayList<>(List.of(answer.summary()));
        Message missing = answer.policies().get(0).salt().missingBecause();
        if (missing != null) {
            sentences.addAll(List.of(Message.of("calendarFile.noSaltPurchasesListed"), missing));
        }
        answer.cautions().stream().filter(caution -> caution.severity() != Severity.INFO).map(CautionAnswer::message)
                .forEach(sentences::add);
        sentences.add(Message.of("calendarFile.theseDatesEstimatesPlanning"));
        planned.others().ifPresent(sentences::add);
        return Message.sentences(sentences);
    }
}
