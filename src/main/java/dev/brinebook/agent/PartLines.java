// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.agent.ValueText.Rounding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Parts of an answer in full, rounded for people, up to a length: what does not fit is left out whole and named. */
final class PartLines {

    /** About 6,000 tokens, with room for the cautions beside. */
    static final int LONGEST = 15_500;
    private static final int MOST_NAMED = 30;
    /** Parts that say what a controller takes. */
    private static final String SETTINGS = "(settings|cycle|refill|brine|findings)";

    private final ValueText words;
    private final String path;
    private final List<String> lines = new ArrayList<>();
    private final List<String> left = new ArrayList<>();
    private int room = LONGEST;

    /**
     * Nothing yet.
     *
     * @param path of the operation, where all can be had
     */
    PartLines(ValueText words, String path) {
        this.words = words;
        this.path = path;
    }

    /** Adds the part at {@code pointer}; of one that is too long what fits of its own parts. */
    void add(String pointer, Object part) {
        if (fits(pointer, part)) {
            return;
        }
        Map<String, Object> inner = inner(part);
        List<String> out = inner.keySet().stream().filter(name -> !fits(pointer + "/" + name, inner.get(name)))
                .map(name -> pointer + "/" + name).toList();
        left.addAll(out.size() == inner.size() ? List.of(pointer) : out);
    }

    private boolean fits(String pointer, Object part) {
        String line = pointer + ": " + text(pointer, part);
        if (line.length() > room) {
            return false;
        }
        room -= line.length() + 1;
        lines.add(line);
        return true;
    }

    /** The lines, with what was left out. */
    List<String> lines() {
        List<String> all = new ArrayList<>(lines);
        if (!left.isEmpty()) {
            all.add(leftOut(left, path));
        }
        return all;
    }

    /** How to ask for what was left out. */
    static String leftOut(List<String> pointers, String path) {
        return "Left out, as too long together: " + pointers.stream().limit(MOST_NAMED).collect(Collectors.joining(", "))
                + (pointers.size() > MOST_NAMED ? " and " + (pointers.size() - MOST_NAMED) + " more" : "")
                + ". Ask for one: show with its pointer, or a deeper one; or POST " + path + "?detail=full&fields="
                + pointers.get(0).substring(1).replaceAll("/\\d+", "").replace('/', '.') + ".";
    }

    private static Map<String, Object> inner(Object part) {
        Map<String, Object> inner = new LinkedHashMap<>();
        if (part instanceof Record one) {
            inner.putAll(AnswerTree.components(one));
        } else if (part instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                inner.put(Integer.toString(i), list.get(i));
            }
        }
        return inner;
    }

    private String text(String pointer, Object part) {
        boolean setting = pointer.split("/", 3)[1].matches(SETTINGS);
        String name = pointer.substring(pointer.lastIndexOf('/') + 1);
        if (part instanceof List<?> list) {
            return list.stream().map(one -> text(pointer, one)).collect(Collectors.joining(" | ", "[", "]"));
        }
        String said = words.of(part, name, setting ? Rounding.SETTING : Rounding.FOR_PEOPLE);
        if (said == null && part instanceof Record one) {
            return AnswerTree.components(one).entrySet().stream().map(inner -> inner.getKey() + " "
                    + text(pointer + "/" + inner.getKey(), inner.getValue())).collect(Collectors.joining("; ", "{", "}"));
        }
        return said == null ? "none" : ValueText.plain(said);
    }
}
