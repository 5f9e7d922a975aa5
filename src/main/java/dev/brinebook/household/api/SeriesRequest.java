package dev.brinebook.household.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.household.Days;
import dev.brinebook.household.Demand;
import dev.brinebook.quantity.VolumeUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

@About("Use measured day by day, without gaps.")
public record SeriesRequest(
        @Property(value = "Date of the first value.", required = true, example = "\"2026-01-01\"") LocalDate firstDate,
        @Property(value = "The unit of the values.", required = true, example = "\"L\"") VolumeUnit unit,
        @Property(value = "Indoor use of each day, three years at most; 45,000 L a day at most.", required = true,
                min = 0, minItems = 1, maxItems = Days.MAX_DAYS, example = "[310, 295, 402]") List<BigDecimal> values)
        implements Checked {

    @Override
    public void check(Violations at) {
        for (int i = 0; unit != null && values != null && i < values.size(); i++) {
            if (values.get(i) != null && unit.toBase(values.get(i).doubleValue()) > Demand.MAX_MEASURED_DAY_LITRES) {
                at.at("values").at(i).add(Code.OUT_OF_RANGE, "must be at most "
                        + Demand.MAX_MEASURED_DAY_LITRES / unit.definition().factor() + " " + unit.symbol());
            }
        }
    }

    /** The softened part of each day: {@code share} of the value and {@code extraLitres}. */
    Days toDays(double share, double extraLitres) {
        return Days.series(firstDate, values.stream()
                .mapToDouble(value -> unit.toBase(value.doubleValue()) * share + extraLitres).toArray());
    }
}
