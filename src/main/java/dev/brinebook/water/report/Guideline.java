// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.source.Table;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * A value that a public authority sets for drinking water, in the unit that the parameter is calculated with.
 *
 * <p>Sources: [NSDWR] and [NPDWR], [WHO-GDWQ], [EU-2020-2184], [TRINKWV], [NH-DWGB-3-8]. What a health value says belongs to the
 * health authority, not to the sizing of a softener.
 *
 * @param parameter what it is for
 * @param authority who sets it
 * @param kind what it protects
 * @param low the least, where there is one
 * @param high the most, where there is one
 * @param sourceKey key of its source
 */
public record Guideline(Parameter parameter, Authority authority, Kind kind, OptionalDouble low, OptionalDouble high, String sourceKey) {

    private static final int COLUMNS = 7;
    private static final List<Guideline> ALL = List.copyOf(Table.read("/water/report-guidelines.csv", '|', COLUMNS).stream()
            .map(Guideline::read).toList());
    private static final Map<Parameter, List<Guideline>> BY_PARAMETER = ALL.stream().collect(Collectors.groupingBy(Guideline::parameter));

    /** Who sets a value. */
    public enum Authority {
        UNITED_STATES, WHO, EUROPEAN_UNION, GERMANY
    }

    /** What a value protects. */
    public enum Kind {
        HEALTH,
        /** Taste, smell, stains. */
        AESTHETIC,
        /** A sign that something is not as usual. */
        INDICATOR
    }

    private static Guideline read(String[] row) {
        Parameter parameter = Parameter.named(row[0]);
        PrintedForm form = PrintedForm.of(parameter, row[5].isEmpty() ? PrintedForm.of(parameter).get(0).form()
                : ReportForm.valueOf(Parameter.constant(row[5])), parameter.unit()).orElseThrow();
        return new Guideline(parameter, Authority.valueOf(Parameter.constant(row[1])), Kind.valueOf(Parameter.constant(row[2])),
                number(row[3], form), number(row[4], form), row[6]);
    }

    private static OptionalDouble number(String cell, PrintedForm form) {
        return cell.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(form.factor() * Double.parseDouble(cell));
    }

    public static List<Guideline> all() {
        return ALL;
    }

    /** Those of a parameter, in the order of the table. */
    public static List<Guideline> of(Parameter parameter) {
        return BY_PARAMETER.getOrDefault(parameter, List.of());
    }

    /** Whether a value keeps to it. */
    public boolean holds(double value) {
        return value >= low.orElse(Double.NEGATIVE_INFINITY) && value <= high.orElse(Double.POSITIVE_INFINITY);
    }

    /** The health values that a sample does not keep to, of any of the authorities. */
    public static List<Guideline> missed(Sample sample, Kind kind, Authority... authorities) {
        return ALL.stream().filter(guideline -> guideline.kind() == kind && Arrays.asList(authorities).contains(guideline.authority()))
                .filter(guideline -> sample.has(guideline.parameter()) && !guideline.holds(sample.orZero(guideline.parameter()))).toList();
    }
}
