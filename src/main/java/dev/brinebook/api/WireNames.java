package dev.brinebook.api;

import dev.brinebook.quantity.Unit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How the constants of enums are written on the wire: units by their symbol, all others in camelCase. */
public final class WireNames {

    private WireNames() {
    }

    public static String of(Enum<?> constant) {
        return constant instanceof Unit unit ? unit.symbol() : camelCase(constant.name());
    }

    public static List<String> all(Class<? extends Enum<?>> type) {
        return Arrays.stream(type.getEnumConstants()).map(WireNames::of).toList();
    }

    /** The name of {@code known} nearest to {@code name}, if any is near. */
    public static Optional<String> nearest(String name, List<String> known) {
        int furthest = Math.max(1, name.length() / 3);
        return known.stream().filter(candidate -> distance(name, candidate) <= furthest)
                .min(Comparator.comparingInt(candidate -> distance(name, candidate)));
    }

    private static String camelCase(String constant) {
        StringBuilder text = new StringBuilder();
        for (String word : constant.toLowerCase(Locale.ROOT).split("_")) {
            text.append(text.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        return text.toString();
    }

    /** Levenshtein's edit distance, without regard to case. */
    private static int distance(String left, String right) {
        String a = left.toLowerCase(Locale.ROOT);
        String b = right.toLowerCase(Locale.ROOT);
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
