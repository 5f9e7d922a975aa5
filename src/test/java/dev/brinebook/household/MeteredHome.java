package dev.brinebook.household;

import dev.brinebook.source.Table;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A home of {@code daily-use.csv}, whose header has the notice, with the people that its header has. */
record MeteredHome(String key, int people, MeteredDays days) {

    static final String FILE = "/household/daily-use.csv";
    private static final Pattern PEOPLE = Pattern.compile("(h\\d+)=(\\d+)");

    static List<MeteredHome> all() {
        Map<String, Integer> people = new LinkedHashMap<>();
        Matcher known = PEOPLE.matcher(text());
        while (known.find()) {
            people.put(known.group(1), Integer.valueOf(known.group(2)));
        }
        Map<String, TreeMap<LocalDate, Double>> homes = new LinkedHashMap<>();
        Table.read(FILE, ',', 3).forEach(row -> homes.computeIfAbsent(row[0], home -> new TreeMap<>())
                .put(LocalDate.parse(row[1]), Double.valueOf(row[2])));
        return homes.entrySet().stream().map(home -> new MeteredHome(home.getKey(), people.get(home.getKey()),
                days(home.getValue()))).toList();
    }

    private static MeteredDays days(TreeMap<LocalDate, Double> byDate) {
        LocalDate first = byDate.firstKey();
        double[] litres = new double[(int) ChronoUnit.DAYS.between(first, byDate.lastKey()) + 1];
        Arrays.fill(litres, Double.NaN);
        byDate.forEach((date, value) -> litres[(int) ChronoUnit.DAYS.between(first, date)] = value);
        return MeteredDaysTest.days(first, litres);
    }

    private static String text() {
        try (var stream = Objects.requireNonNull(MeteredHome.class.getResourceAsStream(FILE), FILE)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Known days from number {@code from} on, up to but not with number {@code to}, and the gaps between them. */
    MeteredDays known(int from, int to) {
        int[] known = days.known();
        return days.until(known[to - 1] + 1).since(known[from]);
    }
}
