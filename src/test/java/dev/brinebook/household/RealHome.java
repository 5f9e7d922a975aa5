package dev.brinebook.household;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
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
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * One of 45 real homes whose use was metered for a year: {@code daily-use.csv}, of the open data of [DAIAD], CC BY-SA 4.0.
 *
 * @param name its key in the table
 * @param days its days in order
 */
public record RealHome(String name, MeteredDays days) {

    public static final String TABLE = "/household/daily-use.csv";

    /** Every home of the table. */
    public static List<RealHome> all() {
        Map<String, TreeMap<LocalDate, Double>> homes = new LinkedHashMap<>();
        for (CSVRecord row : rows(TABLE)) {
            homes.computeIfAbsent(row.get("home"), home -> new TreeMap<>()).put(LocalDate.parse(row.get("date")),
                    Double.valueOf(row.get("litres")));
        }
        return homes.entrySet().stream().map(home -> new RealHome(home.getKey(), metered(home.getValue()))).toList();
    }

    /** Rows of a table on the class path whose head is a notice. */
    public static List<CSVRecord> rows(String resource) {
        try (Reader reader = new InputStreamReader(Objects.requireNonNull(RealHome.class.getResourceAsStream(resource), resource),
                StandardCharsets.UTF_8)) {
            return CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setCommentMarker('#').get().parse(reader)
                    .getRecords();
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
        int[] known = days.known();
        return part(0, known[known.length / 2 - 1]);
    }

    /** The other half. */
    public MeteredDays secondHalf() {
        int[] known = days.known();
        return part(known[known.length / 2], known[known.length - 1]);
    }

    private MeteredDays part(int first, int last) {
        List<OptionalDouble> part = new ArrayList<>();
        for (int i = first; i <= last; i++) {
            part.add(days.isKnown(i) ? OptionalDouble.of(days.litres(i)) : OptionalDouble.empty());
        }
        return MeteredDays.of(days.dateOf(first), part);
    }

    /** A day with less use than this counts as one with nobody at home: 10 L, or a tenth of the median day. */
    public double absenceLitres() {
        double[] known = new double[days.known().length];
        for (int i = 0; i < known.length; i++) {
            known[i] = days.litres(days.known()[i]);
        }
        return Math.max(10, 0.1 * Trend.median(known));
    }
}
