package dev.brinebook.operation.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.household.Country;
import dev.brinebook.household.Demand;
import dev.brinebook.household.Meter;
import dev.brinebook.household.Meter.Kind;
import dev.brinebook.household.MeterReading;
import java.util.List;
import java.util.stream.IntStream;

@About("Readings of a water meter that are to be made into days.")
public record MeterReadingsRequest(
        @Property(value = "The meter.", required = true) MeterRequest meter,
        @Property(value = "What a reading counts: register, all that ever passed, or volume, what passed in the interval that"
                + " began at its time.", required = true, example = "\"register\"") Kind kind,
        @Property(value = "The readings, in the order in which they were written down. A body of 256 KiB holds some 6,500 of"
                + " them; a year of hours fits as text/csv.", required = true, minItems = 1, maxItems = Meter.MAX_READINGS)
        List<MeterReadingRequest> readings,
        @Property(value = "People living there: they make the forecast surer, the more the fewer the days are, and the use is"
                + " compared with theirs.", min = 1, max = Demand.MAX_PEOPLE, example = "4") Integer people,
        @Property(value = "Where they live, for what a person uses. Without effect unless people are given.",
                fallback = "unitedStates", example = "\"germany\"") Country country,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units)
        implements Checked {

    @Override
    public void check(Violations at) {
        if (meter != null && kind != null) {
            meter.check(kind, at.at("meter"));
        }
    }

    /** The readings, each with its place in the list, the first being 1. */
    ReadRows rows() {
        return new ReadRows("/readings", IntStream.range(0, readings.size()).mapToObj(i -> {
            WrittenTime time = WrittenTime.parse(readings.get(i).at()).orElseThrow();
            return new MeterReading(i + 1, time.local(), time.offset(), readings.get(i).value().doubleValue());
        }).toList(), List.of());
    }
}
