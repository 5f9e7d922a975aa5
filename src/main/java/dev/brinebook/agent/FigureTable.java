// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.agent;

import dev.brinebook.agent.ValueText.Rounding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The figures that matter of each operation, as {@code figures.txt} lists them; of one that it does not list by a general rule. */
final class FigureTable {

    /** {@code {pointer}}, or with a mark how it is rounded. */
    static final Pattern SLOT = Pattern.compile("\\{([^}!~]+)([!~]?)}");

    private static final Pattern ROWS = Pattern.compile("([*+]) ([^ ?]+)(?:\\?([^ =]+)=(\\S+))? (\\d+) \\| (.*)");
    private static final Pattern LABEL = Pattern.compile("<(\\S+) ([^>]+)>");
    private static final int MOST_LINES = 4;
    private static final int MOST_SCALARS = 10;
    private static final Map<String, List<String>> LINES = read();

    private final ValueText words;
    private final Predicate<String> isAssumed;

    /**
     * A table.
     *
     * @param words says values
     * @param isAssumed whether a setting of this name was assumed
     */
    FigureTable(ValueText words, Predicate<String> isAssumed) {
        this.words = words;
        this.isAssumed = isAssumed;
    }

    private static Map<String, List<String>> read() {
        Map<String, List<String>> all = new LinkedHashMap<>();
        List<String> lines = List.of();
        for (String line : Json.lines("figures.txt")) {
            if (line.startsWith("[")) {
                lines = new ArrayList<>();
                all.put(line.substring(1, line.length() - 1), lines);
            } else {
                lines.add(line);
            }
        }
        return all;
    }

    /** The lines of the file for each operation that it lists. */
    static Map<String, List<String>> lines() {
        return Map.copyOf(LINES);
    }

    /** The figures of an answer, line by line, each with what it is at its head. A no-break space would cost a token each time. */
    List<String> figures(String operation, Record answer) {
        List<String> written = new ArrayList<>();
        if (!LINES.containsKey(operation)) {
            generally(answer, written);
        }
        for (String line : LINES.getOrDefault(operation, List.of())) {
            Matcher row = ROWS.matcher(line);
            if (row.matches()) {
                rows(row, answer, written);
            } else {
                fill(labelled(line, answer), answer, written);
            }
        }
        return written.stream().map(ValueText::plain).toList();
    }

    /** The line with the first of its labels whose pointer has a value. */
    private static String labelled(String line, Record answer) {
        Matcher label = LABEL.matcher(line);
        String chosen = null;
        int end = 0;
        while (label.find()) {
            chosen = chosen == null && AnswerTree.at(answer, label.group(1)) != null ? label.group(2) : chosen;
            end = label.end();
        }
        return end == 0 ? line : (chosen == null ? "Set" : chosen) + line.substring(end);
    }

    private void rows(Matcher row, Record answer, List<String> to) {
        String line = row.group(6);
        List<?> list = chosen(row, answer);
        int most = Integer.parseInt(row.group(5));
        List<String> lines = new ArrayList<>();
        list.stream().limit(most).forEach(one -> fill(line + assumed(one), one, lines));
        if (row.group(1).equals("+") && !lines.isEmpty()) {
            String label = line.substring(0, line.indexOf(": ") + 2);
            to.add(label + lines.stream().map(one -> one.substring(label.length())).collect(Collectors.joining("; ")));
        } else {
            to.addAll(lines);
        }
        if (list.size() > most) {
            to.add("(" + (list.size() - most) + " more: show [\"" + row.group(2) + "\"])");
        }
    }

    /** The elements of the list of rows; only those with the value, or the value at the pointer, that the rows name. */
    private List<?> chosen(Matcher row, Record answer) {
        List<?> list = AnswerTree.list(answer, row.group(2));
        if (row.group(3) == null) {
            return list;
        }
        String wanted = row.group(4).startsWith("/") ? words.of(AnswerTree.at(answer, row.group(4)), "", Rounding.SETTING) : row.group(4);
        return list.stream().filter(one -> wanted != null && wanted.equals(words.of(AnswerTree.at(one, "/" + row.group(3)), "",
                Rounding.SETTING))).toList();
    }

    private String assumed(Object row) {
        Object setting = AnswerTree.at(row, "/shouldBe") == null ? null : AnswerTree.at(row, "/setting");
        return setting instanceof Enum<?> && isAssumed.test(words.of(setting, "setting", Rounding.SETTING))
                ? "; (assumed, nobody stated it)" : "";
    }

    /** Fills the slots of a line; a segment with an empty one is left out, and a line without any segment too. */
    private void fill(String line, Object from, List<String> to) {
        int colon = line.indexOf(": ");
        boolean labelled = colon > 0 && !line.substring(0, colon).contains("{");
        String label = labelled ? line.substring(0, colon + 2) : "";
        List<String> said = new ArrayList<>();
        for (String segment : line.substring(label.length()).split("; ")) {
            StringBuilder filled = new StringBuilder();
            if (fillSegment(segment, from, filled)) {
                said.add(filled.toString());
            }
        }
        boolean something = said.stream().anyMatch(segment -> !segment.startsWith("("));
        if (something) {
            to.add(label + String.join("; ", said));
        }
    }

    private boolean fillSegment(String segment, Object from, StringBuilder filled) {
        Matcher slot = SLOT.matcher(segment);
        while (slot.find()) {
            String pointer = slot.group(1);
            String value = words.of(AnswerTree.at(from, pointer), pointer.substring(pointer.lastIndexOf('/') + 1),
                    rounding(slot.group(2)));
            if (value == null) {
                return false;
            }
            slot.appendReplacement(filled, Matcher.quoteReplacement(value));
        }
        slot.appendTail(filled);
        return true;
    }

    private static Rounding rounding(String mark) {
        return mark.isEmpty() ? Rounding.FOR_PEOPLE : mark.equals("!") ? Rounding.SETTING : Rounding.FOUR_DIGITS;
    }

    /** Values of the first level, some of each part, a few lines of each list. */
    private void generally(Record answer, List<String> to) {
        AnswerTree.components(answer).forEach((name, value) -> {
            String said = AnswerText.APART.contains(name) ? null : words.of(value, name, Rounding.FOR_PEOPLE);
            if (AnswerText.APART.contains(name)) {
                return;
            }
            if (value instanceof List<?> list && !list.isEmpty() && list.get(0) instanceof Record) {
                list.stream().limit(MOST_LINES).forEach(one -> addScalars(name, (Record) one, to));
            } else if (said != null) {
                to.add(name + ": " + said);
            } else if (value instanceof Record part) {
                addScalars(name, part, to);
            }
        });
    }

    private void addScalars(String name, Record part, List<String> to) {
        List<String> scalars = new ArrayList<>();
        AnswerTree.components(part).forEach((own, value) -> {
            String said = words.of(value, own, Rounding.FOR_PEOPLE);
            if (said != null && scalars.size() < MOST_SCALARS) {
                scalars.add(own + " " + said);
            }
        });
        if (!scalars.isEmpty()) {
            to.add(name + ": " + String.join("; ", scalars));
        }
    }
}
