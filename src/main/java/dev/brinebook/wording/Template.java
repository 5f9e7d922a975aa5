package dev.brinebook.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A template taken apart: its texts and, between each two, the value that stands there. Templates are constants of the code
 * and of the tables of languages, so that each is taken apart once and kept.
 */
final class Template {

    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");
    private static final Pattern WORD = Pattern.compile("\\p{L}");
    private static final Map<String, Template> KNOWN = new ConcurrentHashMap<>();

    private final String whole;
    private final List<String> texts;
    private final int[] places;
    private final boolean wordless;

    private Template(String whole, List<String> texts, int[] places) {
        this.whole = whole;
        this.texts = List.copyOf(texts);
        this.places = places;
        this.wordless = texts.stream().noneMatch(text -> WORD.matcher(text).find());
    }

    static Template of(String whole) {
        Template known = KNOWN.get(whole);
        return known != null ? known : KNOWN.computeIfAbsent(whole, Template::parse);
    }

    private static Template parse(String whole) {
        List<String> texts = new ArrayList<>();
        List<Integer> places = new ArrayList<>();
        Matcher place = PLACE.matcher(whole);
        int end = 0;
        while (place.find()) {
            texts.add(whole.substring(end, place.start()));
            places.add(Integer.valueOf(place.group(1)));
            end = place.end();
        }
        texts.add(whole.substring(end));
        return new Template(whole, texts, places.stream().mapToInt(Integer::intValue).toArray());
    }

    /** Whether it holds nothing but places and signs. */
    boolean isWordless() {
        return wordless;
    }

    /** How many values stand in it. */
    int count() {
        return places.length;
    }

    /** The text before the value at {@code index}, or after the last. */
    String text(int index) {
        return texts.get(index);
    }

    /** Which of the values stands at {@code index}. */
    int place(int index) {
        return places[index];
    }

    /** As it stands in the code or in the table of its language. */
    @Override
    public String toString() {
        return whole;
    }
}
