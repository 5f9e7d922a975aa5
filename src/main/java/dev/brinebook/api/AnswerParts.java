// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.api.Violation.Code;
import dev.brinebook.text.Message;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The parts of an answer that a caller wants. Cautions of severity stop and warning, and the version of the model, are always among
 * them.
 *
 * @param detail how much of the answer
 * @param fields names of the only properties wanted, dots between as in a table, through lists too; all of that detail when empty
 * @param wanted what is written of the answer
 */
public record AnswerParts(Detail detail, List<String> fields, AnswerPart wanted) {

    /** The parameter of the detail. */
    public static final String DETAIL = "detail";
    /** The parameter of the fields. */
    public static final String FIELDS = "fields";
    /** Names in one request at most. */
    public static final int MAX_FIELDS = 100;
    /** Everything that an answer has. */
    public static final AnswerParts ALL = new AnswerParts(Detail.FULL, List.of(), AnswerPart.WHOLE);

    /** When an answer leaves out what explains it, in words behind "absent". */
    public static final String NOT_STANDARD = "unless detail or fields asks for it";

    private static final String BASIS = "basis";
    private static final String ASSUMPTIONS = "assumptions";
    private static final String CAUTIONS = "cautions";
    private static final String VERSION = "modelVersion";
    private static final String VERDICT = "verdict";

    private static final Pattern HARMLESS = Pattern.compile("[A-Za-z0-9._-]{1,60}");

    private static final ClassValue<Map<Detail, AnswerPart>> BY_DETAIL = new ClassValue<>() {
        @Override
        protected Map<Detail, AnswerPart> computeValue(Class<?> answer) {
            Map<Detail, AnswerPart> parts = new EnumMap<>(Detail.class);
            Arrays.stream(Detail.values()).forEach(detail -> parts.put(detail, of(answer, detail)));
            return parts;
        }
    };

    public AnswerParts {
        fields = List.copyOf(fields);
    }

    /** How much of an answer. */
    public enum Detail {
        /** Numbers and codes, and what every answer has. */
        NUMBERS,
        /** Everything but assumptions and basis. */
        STANDARD,
        /** Everything. */
        FULL
    }

    /**
     * What the parameters ask for.
     *
     * @param detail as given, null for the default
     * @param fields as given, null for all
     * @param answer the record of the answers
     * @param violations gets every error, at the names of the parameters
     */
    public static AnswerParts parse(String detail, String fields, Class<? extends Record> answer, Violations violations) {
        Detail wanted = detail == null ? Detail.STANDARD : detail(detail, violations.at(DETAIL));
        AnswerPart given = BY_DETAIL.get(answer).get(wanted);
        if (fields == null) {
            return wanted == Detail.FULL ? ALL : new AnswerParts(wanted, List.of(), given);
        }
        List<String> names = names(fields, answer, violations.at(FIELDS));
        return new AnswerParts(wanted, names, picked(names, given));
    }

    /** The parts of {@code answer} that a request without parameters gets. */
    public static AnswerParts standard(Class<? extends Record> answer) {
        return new AnswerParts(Detail.STANDARD, List.of(), BY_DETAIL.get(answer).get(Detail.STANDARD));
    }

    /** Of these parts what has one of {@code columns} in a table. */
    public AnswerParts in(List<CsvColumn> columns) {
        return new AnswerParts(detail, fields, AnswerPart.picked(wanted, columns.stream()
                .map(column -> column.isOfEveryUnit() ? column.path().subList(0, column.path().size() - 1) : column.path()).toList()));
    }

    /** Whether nothing is left out. */
    public boolean isAll() {
        return wanted == AnswerPart.WHOLE;
    }

    /** Whether the formulas and sources are wanted, which take the longest to put together. */
    boolean hasBasis() {
        return wanted.at(BASIS) != null;
    }

    private static AnswerPart of(Class<?> answer, Detail detail) {
        if (detail == Detail.FULL) {
            return AnswerPart.WHOLE;
        }
        Map<String, AnswerPart> parts = new HashMap<>();
        AnswerPart.properties(answer).forEach((name, type) -> {
            AnswerPart part = detail == Detail.NUMBERS ? AnswerPart.numbers(type) : AnswerPart.WHOLE;
            boolean advice = detail == Detail.NUMBERS && name.equals(VERDICT) && AnswerPart.isObject(type);
            if (part != null && !advice && !name.equals(BASIS) && !name.equals(ASSUMPTIONS)) {
                parts.put(name, part);
            }
        });
        if (detail == Detail.NUMBERS) {
            parts.replace(CAUTIONS, AnswerPart.SERIOUS_CAUTIONS);
        }
        return AnswerPart.of(parts);
    }

    /** Cautions are whole, or not named; so is the version. */
    private static AnswerPart picked(List<String> names, AnswerPart given) {
        List<List<String>> paths = new ArrayList<>();
        names.forEach(name -> paths.add(Arrays.asList(name.split("\\."))));
        AnswerPart picked = AnswerPart.picked(given, paths);
        Map<String, AnswerPart> parts = new HashMap<>();
        paths.forEach(path -> parts.put(path.get(0), picked.at(path.get(0))));
        parts.put(CAUTIONS, parts.containsKey(CAUTIONS) ? AnswerPart.WHOLE : AnswerPart.SERIOUS_CAUTIONS);
        parts.put(VERSION, AnswerPart.WHOLE);
        return AnswerPart.of(parts);
    }

    private static Detail detail(String given, Violations at) {
        List<String> known = WireNames.all(Detail.class);
        if (known.contains(given)) {
            return Detail.values()[known.indexOf(given)];
        }
        at.add(new Violation(at.pointer(), Code.UNKNOWN_VALUE, Message.of("problem.http.mustOne", String.join(", ", known)),
                Violation.names(known),
                WireNames.nearest(given, known).orElse(null), harmless(given)));
        return Detail.STANDARD;
    }

    private static List<String> names(String given, Class<?> answer, Violations at) {
        String[] names = given.split(",", -1);
        if (given.isEmpty() || names.length > MAX_FIELDS) {
            at.add(Code.WRONG_COUNT, Message.of("answerParts.count", MAX_FIELDS, given.isEmpty() ? 0 : names.length));
            return List.of();
        }
        List<String> known = new ArrayList<>();
        for (int i = 0; i < names.length; i++) {
            if (isKnown(names[i], answer)) {
                known.add(names[i]);
            } else {
                at.add(unknown(names[i], answer, at.at(i).pointer()));
            }
        }
        return known;
    }

    private static boolean isKnown(String name, Class<?> answer) {
        Class<?> type = answer;
        for (String property : name.split("\\.", -1)) {
            type = type == null ? null : AnswerPart.properties(type).get(property);
        }
        return type != null;
    }

    private static Violation unknown(String name, Class<?> answer, String pointer) {
        String nearest = nearest(name, answer).orElse(null);
        return new Violation(pointer, Code.UNKNOWN_FIELD, nearest == null ? Message.of("answerParts.unknown")
                : Message.of("answerParts.unknownDidYou", nearest), null, nearest, harmless(name));
    }

    /** The nearest name, or the only one that ends so. */
    private static Optional<String> nearest(String name, Class<?> answer) {
        List<String> all = new ArrayList<>();
        addNames(answer, "", all);
        List<String> ends = all.stream().filter(one -> one.endsWith("." + name)).toList();
        if (ends.size() == 1) {
            return Optional.of(ends.get(0));
        }
        String owner = name;
        while (owner.contains(".")) {
            owner = owner.substring(0, owner.lastIndexOf('.'));
            if (isKnown(owner, answer)) {
                String start = owner + ".";
                return WireNames.nearest(name, all.stream().filter(one -> one.startsWith(start)).toList());
            }
        }
        return WireNames.nearest(name, all.stream().filter(one -> !one.contains(".")).toList());
    }

    private static void addNames(Class<?> type, String prefix, List<String> to) {
        AnswerPart.properties(type).forEach((name, of) -> {
            to.add(prefix + name);
            addNames(of, prefix + name + ".", to);
        });
    }

    private static String harmless(String text) {
        return HARMLESS.matcher(text).matches() ? text : null;
    }
}
