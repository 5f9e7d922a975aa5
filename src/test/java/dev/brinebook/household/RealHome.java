// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * One of 45 real homes whose use was metered for a year: {@code daily-use.csv}, of the open data of [DAIAD], CC BY-SA 4.0.
 *
 * @param name its key in the table
 * @param people how many live there, of the table's head
 * @param days its days in order
 */
public record RealHome(String name, int people, MeteredDays days) {

    public static final String TABLE = "/household/daily-use.csv";
    private static final Pattern PEOPLE = Pattern.compile("(h\\d+)=(\\d+)");

    /** Every home of the table. */
    public static List<RealHome> all() {
        Map<String, Integer> people = PEOPLE.matcher(text(TABLE)).results()
                .collect(Collectors.toMap(known -> known.group(1), known -> Integer.valueOf(known.group(2))));
        Map<String, TreeMap<LocalDate, Double>> homes = new LinkedHashMap<>();
        for (CSVRecord row : rows(TABLE)) {
            homes.computeIfAbsent(row.get("home"), home -> new TreeMap<>()).put(LocalDate.parse(row.get("date")),
                    Double.valueOf(row.get("litres")));
        }
        return homes.entrySet().stream().map(home -> new RealHome(home.getKey(), people.get(home.getKey()),
                metered(home.getValue()))).toList();
    }

    /** Rows of a table on the class path whose head is a notice. */
    public static List<CSVRecord> rows(String resource) {
        try {
            return CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setCommentMarker('#').get()
                    .parse(new StringReader(text(resource))).getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(String resource) {
        try (InputStream stream = Objects.requireNonNull(RealHome.class.getResourceAsStream(resource), resource)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static MeteredDays metered(TreeMap<LocalDate, Double> litres) {
        List<OptionalDouble> days = new ArrayList<>();
        for (LocalDate date = litres.firstKey(); !date.isAfter(litres.lastKey()); date = date.plusDays(1)) {
            Double known = litres.get(date);
            days.add(known == null ? OptionalDouble.empty() : OptionalDouble.of(known));
        }
        return MeteredDays.of(litres.firstKey(), days);
    }

    /** The first half of the known days, rounded down. */
    public MeteredDays firstHalf() {
        return known(0, days.known().length / 2);
    }

    /** The other half. */
    public MeteredDays secondHalf() {
        return known(days.known().length / 2, days.known().length);
    }

    /** Known days from number {@code from} on, up to but not with number {@code to}, and the gaps between them. */
    MeteredDays known(int from, int to) {
        int[] known = days.known();
        return days.until(known[to - 1] + 1).since(known[from]);
    }

    /** A day with less use than this is taken as one with nobody at home: 10 L, or a tenth of the median day. */
    public double absenceLitres() {
        double[] known = new double[days.known().length];
        for (int i = 0; i < known.length; i++) {
            known[i] = days.litres(days.known()[i]);
        }
        return Math.max(10, 0.1 * Trend.median(known));
    }
}
