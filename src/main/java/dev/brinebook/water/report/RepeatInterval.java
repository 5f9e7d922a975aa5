// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.source.Table;
import dev.brinebook.water.WaterAnalysis.Supply;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How often the water of a private well is tested. What a utility supplies is tested by the utility.
 *
 * <p>Sources: [CDC-WELL-TESTS], [NH-DES-WELL-TESTS]. Where bodies differ, the shortest interval is taken.
 *
 * @param parameter what is tested
 * @param years years from one test to the next
 * @param sourceKey key of its source
 */
public record RepeatInterval(Parameter parameter, int years, String sourceKey) {

    private static final List<RepeatInterval> OF_WELLS = List.copyOf(Table.read("/water/report-repeats.csv", '|', 3).stream()
            .map(row -> new RepeatInterval(Parameter.named(row[0]), Integer.parseInt(row[1]), row[2])).toList());

    /** Those of a supply, in the order of the table. */
    public static List<RepeatInterval> of(Supply supply) {
        return supply == Supply.PRIVATE_WELL ? OF_WELLS : List.of();
    }

    /** The latest day on which a valid sample of the parameter was taken, where one of the lines says it. */
    public Optional<LocalDate> lastOn(List<PrintedResult> lines) {
        return lines.stream().filter(line -> line.parameter() == parameter && !line.isInvalid())
                .flatMap(line -> line.sampling().origin().date().stream()).max(Comparator.naturalOrder());
    }

    /** The day from which the next test is due, where the last one is known. */
    public Optional<LocalDate> dueOn(List<PrintedResult> lines) {
        return lastOn(lines).map(last -> last.plusYears(years));
    }
}
