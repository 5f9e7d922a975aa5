// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.quantity.Unit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** How the constants of enums are written on the wire: units by their symbol, all others in camelCase. */
public final class WireNames {

    private static final ClassValue<List<String>> NAMES = new ClassValue<>() {
        @Override
        protected List<String> computeValue(Class<?> enumeration) {
            return Arrays.stream(enumeration.getEnumConstants()).map(constant -> constant instanceof Unit unit ? unit.symbol()
                    : camelCase(((Enum<?>) constant).name())).toList();
        }
    };

    /** Letters from which a name may be the beginning of another. */
    private static final int SHORTEST_BEGINNING = 4;

    /** What callers write instead, in small letters. */
    private static final Map<String, List<String>> SYNONYMS = Map.ofEntries(
            Map.entry("grain", List.of("gpg", "gr")), Map.entry("grains", List.of("gpg", "gr")),
            Map.entry("ppm", List.of("mg/L")), Map.entry("degrees", List.of("dH")), Map.entry("degree", List.of("dH")),
            Map.entry("cuft", List.of("ft3")), Map.entry("cu ft", List.of("ft3")), Map.entry("cubic feet", List.of("ft3")),
            Map.entry("gallons", List.of("gal")), Map.entry("liters", List.of("L")), Map.entry("litres", List.of("L")),
            Map.entry("lbs", List.of("lb")), Map.entry("pounds", List.of("lb")),
            Map.entry("meter", List.of("meteredDelayed")), Map.entry("metered", List.of("meteredDelayed")),
            Map.entry("demand", List.of("meteredDelayed")), Map.entry("twin", List.of("twinAlternating")),
            Map.entry("well", List.of("privateWell")), Map.entry("city", List.of("publicSupply")),
            Map.entry("timer", List.of("clock")), Map.entry("clock timer", List.of("clock")),
            Map.entry("nacl", List.of("sodiumChloride")), Map.entry("kcl", List.of("potassiumChloride")));

    private WireNames() {
    }

    public static String of(Enum<?> constant) {
        return all(constant.getDeclaringClass()).get(constant.ordinal());
    }

    /** Of every constant of {@code enumeration}, in their order. */
    public static List<String> all(Class<?> enumeration) {
        return NAMES.get(enumeration);
    }

    /**
     * The name of {@code known} that {@code name} may mean, if any: another word of the trade for it, the nearest by its letters, or the
     * only one that goes on as it begins. It is suggested, never taken.
     */
    public static Optional<String> nearest(String name, List<String> known) {
        return Stream.<Supplier<Optional<String>>>of(
                () -> SYNONYMS.getOrDefault(name.toLowerCase(Locale.ROOT).strip(), List.of()).stream().filter(known::contains).findFirst(),
                () -> nearestByLetters(name, known), () -> onlyBeginning(name, known)).map(Supplier::get)
                .flatMap(Optional::stream).findFirst();
    }

    private static Optional<String> onlyBeginning(String name, List<String> known) {
        List<String> longer = known.stream().filter(candidate -> name.length() >= SHORTEST_BEGINNING && candidate.regionMatches(true, 0,
                name, 0, name.length())).toList();
        return longer.size() == 1 ? Optional.of(longer.get(0)) : Optional.empty();
    }

    private static Optional<String> nearestByLetters(String name, List<String> known) {
        int furthest = Math.max(1, name.length() / 3);
        return known.stream().filter(candidate -> Math.abs(name.length() - candidate.length()) <= furthest)
                .filter(candidate -> distance(name, candidate) <= furthest)
                .min(Comparator.comparingInt(candidate -> distance(name, candidate)));
    }

    private static String camelCase(String constant) {
        StringBuilder text = new StringBuilder();
        for (String word : constant.toLowerCase(Locale.ROOT).split("_")) {
            text.append(text.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        return text.toString();
    }

    /** Edits between two names, without regard to case; two letters swapped are one (optimal string alignment). */
    private static int distance(String left, String right) {
        String a = left.toLowerCase(Locale.ROOT);
        String b = right.toLowerCase(Locale.ROOT);
        int[][] edits = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                edits[i][j] = i == 0 || j == 0 ? i + j : Math.min(
                        edits[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1),
                        Math.min(edits[i - 1][j], edits[i][j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    edits[i][j] = Math.min(edits[i][j], edits[i - 2][j - 2] + 1);
                }
            }
        }
        return edits[a.length()][b.length()];
    }
}
