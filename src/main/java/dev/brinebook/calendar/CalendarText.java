// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.calendar;

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
import java.util.Map;
import java.util.OptionalInt;
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

/** A calendar file (RFC 5545, with a name and description by RFC 7986). No event blocks time or has an alarm. */
public final class CalendarText {

    public static final String MEDIA_TYPE = "text/calendar";

    /** Namespace of the UIDs: a random UUID, chosen once. */
    private static final UUID NAMESPACE = UUID.fromString("7d0c3a52-5b0e-4f0b-9a6e-3f1c2f7f8a41");
    /** Lines are folded by octets afterwards. */
    private static final int NOT_FOLDED = 1_000_000;

    private final Instant stamp;
    private final Map<String, Integer> named = new HashMap<>();
    private final List<VEvent> events = new ArrayList<>();

    /**
     * What stands before the events.
     *
     * @param product identifier of what made the file
     * @param title name of the calendar
     * @param description what it holds
     * @param first date at whose start, in UTC, every event is stamped
     */
    public record Head(String product, String title, String description, LocalDate first) {
    }

    /**
     * One event.
     *
     * @param name what distinguishes it from others; those of one name are counted
     * @param date when it is
     * @param startHour when it starts; none when it takes the day
     * @param minutes how long it lasts from there on
     * @param category its category
     * @param summary its title
     * @param description more about it
     */
    public record Event(String name, LocalDate date, OptionalInt startHour, int minutes, String category, String summary,
            String description) {
    }

    private CalendarText(LocalDate first) {
        stamp = first.atStartOfDay().toInstant(ZoneOffset.UTC);
    }

    /** The text of a calendar file. */
    public static String of(Head head, List<Event> events) {
        CalendarText text = new CalendarText(head.first());
        events.forEach(text::add);
        List<Property> about = List.of(new ProdId(head.product()), ImmutableVersion.VERSION_2_0, new Name(head.title()),
                new Description(head.description()));
        return written(new Calendar(new PropertyList(about), new ComponentList<>(text.events)));
    }

    private void add(Event event) {
        List<Property> properties = new ArrayList<>(List.of(new Uid(uid(event).toString()), new DtStamp(stamp)));
        if (event.startHour().isPresent()) {
            LocalDateTime start = event.date().atTime(event.startHour().getAsInt(), 0);
            properties.add(new DtStart<>(start));
            properties.add(new DtEnd<>(start.plusMinutes(event.minutes())));
        } else {
            properties.add(new DtStart<>(event.date()));
            properties.add(new DtEnd<>(event.date().plusDays(1)));
        }
        properties.addAll(List.of(new Summary(event.summary()), new Description(event.description()),
                new Categories(event.category()), ImmutableTransp.TRANSPARENT));
        events.add(new VEvent(new PropertyList(properties)));
    }

    /** Named by the event and a counter: a small bed may need two regenerations on one day. */
    private UUID uid(Event event) {
        int before = named.merge(event.name(), 1, Integer::sum) - 1;
        return NameUuid.of(NAMESPACE, event.name() + "\n" + before);
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
