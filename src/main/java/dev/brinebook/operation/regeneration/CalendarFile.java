// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.api.CautionAnswer;
import dev.brinebook.caution.Severity;
import dev.brinebook.text.Language;
import dev.brinebook.text.Message;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Categories;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Name;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableTransp;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;

/** The events of a schedule's first policy as a calendar file (RFC 5545, with a name and description by RFC 7986). */
final class CalendarFile {

    static final String MEDIA_TYPE = "text/calendar";
    static final String DESCRIPTION = "A calendar file (RFC 5545) in UTF-8, for any calendar: all regenerations and salt purchases of "
            + "the first policy, bacteria tests of a private well, and services. A regeneration is at its hour in local time and lasts "
            + "as long as the cycle, in whole minutes. All other events, and regenerations that start immediately, are whole-day events. "
            + "No event blocks time or has an alarm. DTSTAMP is the first day at 00:00 UTC, because the service does not use the clock. "
            + "The UID of an event depends on the compensated hardness, household use, resin volume, seed, policy name, kind and date. "
            + "With another dose, reserve or hour, an event of the same kind and date replaces the first. To separate similar households "
            + "in one calendar, give their policies different names. More than "
            + ScheduleResults.MAX_DATES_OF_A_FILE + " regenerations and salt purchases are refused.";

    /** Namespace of the UIDs: a random UUID, chosen once. */
    private static final UUID NAMESPACE = UUID.fromString("7d0c3a52-5b0e-4f0b-9a6e-3f1c2f7f8a41");
    /** Lines are folded by octets afterwards. */
    private static final int NOT_FOLDED = 1_000_000;

    private final String household;
    /** The same in every language, as it goes into the UIDs. */
    private final String policy;
    private final Language language;
    private final Instant stamp;
    private final Map<String, Integer> named = new HashMap<>();
    private final List<VEvent> events = new ArrayList<>();

    private CalendarFile(CalendarEvents planned, LocalDate firstDate, Language language) {
        this.household = planned.household();
        this.policy = planned.policy().toString();
        this.language = language;
        this.stamp = firstDate.atStartOfDay().toInstant(ZoneOffset.UTC);
    }

    /**
     * The calendar file.
     *
     * @param answer the answer whose summary and cautions go with it
     */
    static String of(ScheduleResults foreseen, ScheduleAnswer answer, Language language) {
        CalendarEvents planned = CalendarEvents.of(foreseen);
        CalendarFile file = new CalendarFile(planned, foreseen.firstDate(), language);
        planned.events().forEach(file::add);
        List<Property> about = List.of(new ProdId("-//Brinebook//Regeneration schedule " + foreseen.given().model().version() + "//EN"),
                ImmutableVersion.VERSION_2_0, new Name(Message.of("calendarFile.waterSoftener", planned.policy().quoted()).in(language)),
                new Description(description(planned, answer).in(language)));
        return written(new Calendar(new PropertyList(about), new ComponentList<>(file.events)));
    }

    private void add(CalendarEvents.Event event) {
        List<Property> properties = new ArrayList<>(List.of(new Uid(uid(event).toString()),
                new DtStamp(stamp)));
        if (event.startHour().isPresent()) {
            LocalDateTime start = event.date().atTime(event.startHour().getAsInt(), 0);
            properties.add(new DtStart<>(start));
            properties.add(new DtEnd<>(start.plusMinutes(event.minutes())));
        } else {
            properties.add(new DtStart<>(event.date()));
            properties.add(new DtEnd<>(event.date().plusDays(1)));
        }
        properties.addAll(List.of(new Summary(event.summary().in(language)),
                new Description(event.description().in(language)),
                new Categories(event.category().name().replace('_', ' ').toLowerCase(Locale.ROOT)),
                ImmutableTransp.TRANSPARENT));
        events.add(new VEvent(new PropertyList(properties)));
    }

    /** Named by kind, date and a counter: a small bed may need two on one day. */
    private UUID uid(CalendarEvents.Event event) {
        String name = String.join("\n", household, policy, event.date().toString(), event.category().name());
        int before = named.merge(name, 1, Integer::sum) - 1;
        return NameUuid.of(NAMESPACE, name + "\n" + before);
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

    private static String written(Calendar calendar) {
        StringWriter text = new StringWriter();
        try {
            new CalendarOutputter(false, NOT_FOLDED).output(calendar, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return FoldedText.of(text.toString());
    }
}
