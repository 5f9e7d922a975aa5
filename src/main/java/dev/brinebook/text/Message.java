// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.text;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Something said to a person, not yet in any language: the id of a text and the values of its slots.
 *
 * <p>Not for codes, names of properties or citations, which are the same in every language and stay text.
 *
 * <p>A value is a number that is rounded already ({@link BigDecimal}, {@link Integer}, {@link Long}), a {@link Measure}, a
 * date, a time of day, another message, or a text that is the same in every language, such as a name that was given.
 */
public final class Message {

    /** The id of a text that holds its first value and nothing else. */
    private static final String VERBATIM = "";
    /** The id of one that is made when it is read. */
    private static final String LATER = "later";

    private static final Pattern QUOTATION_MARKS = Pattern.compile("[\"\\u00ab\\u00bb\\u2018-\\u201f\\u2039\\u203a\\u300c-\\u300f\\uff02]");
    /** Characters of a name that a text repeats. */
    private static final int LONGEST_NAME = 40;

    private final String id;
    private final List<Object> values;
    private final boolean metric;

    private Message(String id, List<Object> values, boolean metric) {
        this.id = id;
        this.values = values;
        this.metric = metric;
    }

    /**
     * A message.
     *
     * @param id id of the text, written as one constant text, so that a test can hold every language to it
     * @param values the values of its slots, in their order
     */
    public static Message of(String id, Object... values) {
        return new Message(id, List.of(values), false);
    }

    /** The text of {@code localizable}. */
    public static Message of(Localizable localizable) {
        return of(localizable.textId());
    }

    /** What {@code made} gives, whenever it is read, which it never is where an answer is asked for without words. */
    public static Message later(Supplier<Message> made) {
        return new Message(LATER, List.of(made), false);
    }

    private Message now() {
        return id.equals(LATER) ? (Message) ((Supplier<?>) values.get(0)).get() : this;
    }

    /** A text that is the same in every language, such as a name that the caller gave. */
    public static Message verbatim(String text) {
        return new Message(VERBATIM, List.of(text), false);
    }

    /**
     * A name that a caller gave, for a sentence: in the quotation marks of the language, so that nobody takes it for a word of ours.
     * Quotation marks within it become apostrophes, so that it cannot end the quotation; it is cut after {@link #LONGEST_NAME} characters.
     */
    public static Message named(String name) {
        int end = name.offsetByCodePoints(0, Math.min(LONGEST_NAME, name.codePointCount(0, name.length())));
        String cut = end == name.length() ? name : name.substring(0, end) + "\u2026";
        return Message.of("name.quoted", QUOTATION_MARKS.matcher(cut).replaceAll("\u2019"));
    }

    /** The same for a sentence: a text that is the same in every language as a name, any other message as it is. */
    public Message quoted() {
        return id.equals(LATER) ? now().quoted() : id.equals(VERBATIM) && !values.get(0).equals("") ? named((String) values.get(0)) : this;
    }

    /** Sentences one after the other. */
    public static Message sentences(Collection<Message> sentences) {
        return joined(Joint.SPACE, sentences);
    }

    /** The same for two sentences or more. */
    public static Message sentences(Message... sentences) {
        return sentences(List.of(sentences));
    }

    /** Messages in a row, with what {@code joint} says between them; AND and OR before the last, commas before that. */
    public static Message joined(Joint joint, Collection<Message> messages) {
        if (messages.isEmpty()) {
            return verbatim("");
        }
        List<Message> all = List.copyOf(messages);
        Message joined = all.get(0);
        for (int next = 1; next < all.size(); next++) {
            Joint here = joint.isBeforeLast() && next < all.size() - 1 ? Joint.COMMA : joint;
            joined = of(here.textId(), joined, all.get(next));
        }
        return joined;
    }

    /** The same message for people who measure in metric units: it chooses where a text names units of its own. */
    public Message inMetricUnits(boolean chosen) {
        return id.equals(LATER) ? later(() -> now().inMetricUnits(chosen)) : chosen == metric ? this : new Message(id, values, chosen);
    }

    /** Names the text of a message without values, of which there are no more than the store holds; else null. */
    public String constantKey() {
        return !values.isEmpty() ? null : metric ? id + " metric" : id;
    }

    /** The message in a language. */
    public String in(Language language) {
        StringBuilder text = new StringBuilder();
        render(language, text);
        return text.toString();
    }

    /** The numbers in its slots and in those of its parts, in their order; a number without a unit has none. */
    public List<Measure> numbers() {
        return now().values.stream().flatMap(Message::numbers).toList();
    }

    private static Stream<Measure> numbers(Object value) {
        if (value instanceof Message message) {
            return message.numbers().stream();
        }
        return value instanceof Measure measure ? Stream.of(measure)
                : value instanceof Number number ? Stream.of(new Measure(decimal(number), null)) : Stream.empty();
    }

    private void render(Language language, StringBuilder to) {
        if (id.equals(VERBATIM)) {
            to.append(values.get(0));
        } else if (id.equals(LATER)) {
            now().render(language, to);
        } else {
            language.pattern(id).render(this, language, to);
        }
    }

    /** Writes the value of a slot. */
    void renderValue(int slot, Language language, StringBuilder to) {
        Object value = value(slot);
        if (value instanceof Message message) {
            message.render(language, to);
        } else if (value instanceof Measure measure) {
            to.append(language.measure(measure));
        } else if (value instanceof LocalDate date) {
            to.append(language.date(date));
        } else if (value instanceof LocalTime time) {
            to.append(language.time(time));
        } else {
            to.append(value instanceof Number number ? language.number(decimal(number)) : value);
        }
    }

    /** What chooses between the branches of a text by a code. */
    String code(int slot) {
        if (value(slot) instanceof String code) {
            return code;
        }
        throw new IllegalArgumentException("the slot " + slot + " of the text " + id + " chooses by a code, but got " + value(slot));
    }

    /** What chooses between the branches of a text by a count. */
    BigDecimal count(int slot) {
        Object value = value(slot);
        return decimal(value instanceof Measure measure ? measure.value() : (Number) value);
    }

    boolean isMetric() {
        return metric;
    }

    private Object value(int slot) {
        if (slot >= values.size()) {
            throw new IllegalArgumentException("the text " + id + " has a slot " + slot + ", but got " + values.size() + " values");
        }
        return values.get(slot);
    }

    private static BigDecimal decimal(Number number) {
        if (number instanceof BigDecimal decimal) {
            return decimal;
        }
        if (number instanceof Integer || number instanceof Long) {
            return BigDecimal.valueOf(number.longValue());
        }
        throw new IllegalArgumentException("a number in a message must be rounded, was a " + number.getClass());
    }

    /** In English. */
    @Override
    public String toString() {
        return in(Language.ENGLISH);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Message message && now().isSame(message.now());
    }

    private boolean isSame(Message message) {
        return id.equals(message.id) && values.equals(message.values) && metric == message.metric;
    }

    @Override
    public int hashCode() {
        Message now = now();
        return Objects.hash(now.id, now.values, now.metric);
    }
}
