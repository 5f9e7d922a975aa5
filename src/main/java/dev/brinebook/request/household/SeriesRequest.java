// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.household;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.household.Days;
import dev.brinebook.household.Demand;
import dev.brinebook.household.MeteredDays;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Days of use. An answer that holds one made it from readings: its {@link Basis} is of those. */
@SchemaDescription("Use measured day by day. List a day that was not measured in missing. Do not write it as 0.")
public record SeriesRequest(
        @Basis(formula = "formula.household.daysMidnightMidnightLocal", source = "IANA-TZ")
        @Property(value = "Date of the first value.", required = true, example = "\"2026-01-01\"") LocalDate firstDate,
        @Property(value = "The unit of the values.", required = true, example = "\"L\"") VolumeUnit unit,
        @Property(value = "Indoor use of each measured day, in order. At most three years, and at most 45,000 L a day.", required = true,
                min = 0, minItems = 1, maxItems = Days.MAX_DAYS, example = "[310, 295, 402]")
        List<BigDecimal> values,
        @Property(value = "Days that were not measured, in ascending order. values has no element for "
                + "them. In household each gets the mean of its weekday. A backtest leaves them out.", maxItems = Days.MAX_DAYS - 1,
                optional = "when no day is missing", fallback = "none", example = "[\"2026-01-03\"]") List<LocalDate> missing)
        implements Checked {

    @Override
    public void check(Violations at) {
        for (int i = 0; unit != null && values != null && i < values.size(); i++) {
            if (values.get(i) != null && unit.toBase(values.get(i).doubleValue()) > Demand.MAX_MEASURED_DAY_LITRES) {
                at.at("values").at(i).add(Code.OUT_OF_RANGE, Message.of("problem.household.mustMost", highest(),
                        unit.symbol()));
            }
        }
        if (missing != null && firstDate != null && values != null && !at.here()) {
            checkMissing(at);
        }
    }

    private void checkMissing(Violations at) {
        LocalDate last = firstDate.plusDays(size() - 1L);
        boolean rising = IntStream.range(1, missing.size()).allMatch(i -> missing.get(i - 1).isBefore(missing.get(i)));
        if (size() > Days.MAX_DAYS) {
            at.add("missing", Code.INCONSISTENT, Message.of("problem.household.valuesMissingMustMost",
                    Days.MAX_DAYS));
        } else if (!rising || missing.stream().anyMatch(date -> date.isBefore(firstDate) || date.isAfter(last))) {
            at.add("missing", Code.INCONSISTENT, Message.of("problem.household.mustDatesAscendingOrder", firstDate, last));
        }
    }

    /** Rounded down, so that it is taken when it comes back. */
    private BigDecimal highest() {
        return BigDecimal.valueOf(unit.fromBase(Demand.MAX_MEASURED_DAY_LITRES))
                .round(new MathContext(Rounding.SIGNIFICANT_DIGITS, RoundingMode.DOWN)).stripTrailingZeros();
    }

    private int size() {
        return values.size() + (missing == null ? 0 : missing.size());
    }

    /** The days in litres; missing ones are stated. */
    MeteredDays toDays(Explanation explanation) {
        if (missing != null && !missing.isEmpty()) {
            explanation.assume(Resolved.of("/household/dailySeries/missing", missing.size(), "days").estimated("OWN-ASSUMPTION")
                    .noting(Message.of("assumed.household.daysMissingEachReplaced", size())));
        }
        return days();
    }

    /** The softened part of each day: {@code share} of the value; missing days stay missing. */
    public MeteredDays toDays(double share) {
        return days().times(share);
    }

    private MeteredDays days() {
        Iterator<BigDecimal> measured = values.iterator();
        Set<LocalDate> unknown = missing == null ? Set.of() : Set.copyOf(missing);
        return MeteredDays.of(firstDate, Stream.iterate(firstDate, date -> date.plusDays(1)).limit(size())
                .map(date -> unknown.contains(date) ? OptionalDouble.empty()
                        : OptionalDouble.of(unit.toBase(measured.next().doubleValue()))).toList());
    }

    /** The days of a meter as a caller may send them back. */
    public static SeriesRequest of(MeteredDays days, VolumeUnit unit) {
        List<LocalDate> missing = days.missing();
        return new SeriesRequest(days.firstDate(), unit, Arrays.stream(days.known())
                .mapToObj(i -> Rounding.answer(unit.fromBase(days.litres(i)))).toList(), missing.isEmpty() ? null : missing);
    }
}
