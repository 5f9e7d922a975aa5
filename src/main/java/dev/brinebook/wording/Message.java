package dev.brinebook.wording;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Objects;

/**
 * Something said to a person, not yet in any language: a template in English, which is also its key in every other
 * language, and the values that stand in it.
 *
 * <p>Not for codes, names of properties or citations, which are the same in every language and stay text.
 */
public final class Message {

    private final String one;
    private final String template;
    private final List<Object> values;

    private Message(String one, String template, List<Object> values) {
        this.one = one;
        this.template = template;
        this.values = values;
    }

    /**
     * A message.
     *
     * @param template English, a whole sentence or phrase, with {@code {0}} to {@code {9}} for the values; a test reads it
     *     from the code, so it is written there as one constant text
     * @param values messages, numbers that are rounded already, or texts that are the same in every language
     */
    public static Message of(String template, Object... values) {
        return new Message(template, template, List.of(values));
    }

    /** What {@code worded} says. */
    public static Message saying(Worded worded) {
        return of(worded.words());
    }

    /** A text that is the same in every language, such as a name that the caller gave. */
    public static Message verbatim(String text) {
        return of("{0}", text);
    }

    /**
     * A message about so many of a thing, the first of {@code values}, which decides between two templates.
     *
     * @param one what is said of one
     * @param many what is said of any other number
     */
    public static Message counted(String one, String many, Number count, Object... values) {
        Object[] all = new Object[values.length + 1];
        all[0] = count;
        System.arraycopy(values, 0, all, 1, values.length);
        return new Message(one, many, List.of(all));
    }

    /** Messages one after the other. */
    public static Message joined(String between, Collection<Message> messages) {
        return messages.isEmpty() ? verbatim("")
                : messages.stream().reduce((before, next) -> of("{0}" + between + "{1}", before, next)).orElseThrow();
    }

    /** Whether the template needs no translation: it holds nothing but places and signs. */
    public static boolean isWordless(String template) {
        return Template.of(template).isWordless();
    }

    /** The English of a message without values, of which there are no more than the code and its tables hold; else null. */
    public String constant() {
        return values.isEmpty() ? template : null;
    }

    /** The message in a language. */
    public String in(Wording wording) {
        Template said = said(wording);
        if (said.count() == 0) {
            return said.toString();
        }
        StringBuilder text = new StringBuilder();
        say(said, wording, text);
        return text.toString();
    }

    private Template said(Wording wording) {
        boolean single = !one.equals(template) && wording.isOne(decimal((Number) values.get(0)));
        Template chosen = Template.of(single ? one : template);
        return chosen.isWordless() ? chosen : Template.of(wording.template(chosen.toString()));
    }

    private void say(Template said, Wording wording, StringBuilder to) {
        for (int index = 0; index < said.count(); index++) {
            to.append(said.text(index));
            Object value = values.get(said.place(index));
            if (value instanceof Message message) {
                message.say(message.said(wording), wording, to);
            } else {
                to.append(value instanceof Number number ? wording.number(decimal(number)) : value);
            }
        }
        to.append(said.text(said.count()));
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
        return in(Wording.ENGLISH);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Message message && one.equals(message.one) && template.equals(message.template)
                && values.equals(message.values);
    }

    @Override
    public int hashCode() {
        return Objects.hash(template, values);
    }
}
