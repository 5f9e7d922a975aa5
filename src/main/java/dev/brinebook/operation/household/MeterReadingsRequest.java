// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.household.Country;
import dev.brinebook.household.Demand;
import dev.brinebook.household.Meter;
import dev.brinebook.household.Meter.Kind;
import dev.brinebook.request.household.MeterReadingRequest;
import dev.brinebook.request.household.MeterRequest;
import java.util.List;
import java.util.stream.IntStream;

@SchemaDescription("Readings of a water meter, to convert to daily use.")
public record MeterReadingsRequest(
        @Property(value = "The meter.", required = true) MeterRequest meter,
        @Property(value = "Kind of reading: register is the running total, volume is the use in the interval that starts at "
                + "its time.", required = true, example = "\"register\"") Kind kind,
        @Property(value = "The readings, in the order recorded. A body of 256 KiB holds about 6,500 readings. A year of hourly "
                + "readings fits as text/csv.", required = true, minItems = 1, maxItems = Meter.MAX_READINGS)
        List<MeterReadingRequest> readings,
        @Property(value = "Number of residents. They make the forecast more certain, most of all with few days, and the use is "
                + "compared with the usual use of as many people.", min = 1, max = Demand.MAX_PEOPLE, example = "4") Integer people,
        @Property(value = "Country, for the usual use per person. No effect unless people are given.",
                defaultCode = "unitedStates", example = "\"germany\"") Country country,
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
        return new ReadRows("/readings", IntStream.range(0, readings.size()).mapToObj(i -> readings.get(i).toDomain(i + 1)).toList(),
                List.of());
    }
}
