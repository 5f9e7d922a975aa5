// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.household.Meter;
import dev.brinebook.household.Meter.Kind;
import dev.brinebook.household.MeterHistory;
import dev.brinebook.household.MeterReading;
import dev.brinebook.household.MeteredDays;
import dev.brinebook.household.MeteredTotal;
import dev.brinebook.request.household.MeterReadingRequest;
import dev.brinebook.request.household.MeterRequest;
import dev.brinebook.text.Message;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

@SchemaDescription("Readings of a water meter in a period, as for readMeter. Two readings of a register, at its start and end, are enough.")
public record MeteredPeriodRequest(
        @Property(value = "The meter.", required = true) MeterRequest meter,
        @Property(value = "Kind of reading: register is the running total, volume is the use in the interval that starts at "
                + "its time.", required = true, example = "\"register\"") Kind kind,
        @Property(value = "The readings, in the order recorded, within a week of the period.", required = true, minItems = 1,
                maxItems = MeteredPeriodRequest.MAX_READINGS) List<MeterReadingRequest> readings) implements Checked {

    static final int MAX_READINGS = 1_200;
    /** Fewer days do not show how they scatter. */
    static final int ASSUMED_FEWEST_DAYS = 28;

    @Override
    public void check(Violations at) {
        if (meter == null || kind == null || at.at("meter").here() || at.at("readings").here()) {
            return;
        }
        meter.check(kind, at.at("meter"));
        boolean whole = readings != null && !readings.isEmpty()
                && readings.stream().allMatch(reading -> reading != null && reading.at() != null && reading.value() != null);
        if (whole && meter.unit() != null && !at.at("meter").here()
                && total().filter(total -> total.litres() >= SavingsPeriodRequest.MIN_WATER_LITRES).isEmpty()) {
            at.add("readings", Code.IMPOSSIBLE, Message.of("problem.savings.noUseInReadings"));
        }
    }

    /** The total of readings without violations. */
    Optional<MeteredTotal> total() {
        return MeteredTotal.of(rows(), toDomain());
    }

    /** The days of readings without violations; empty where they are too few to show how days scatter. */
    Optional<MeteredDays> days() {
        return MeterHistory.of(rows(), toDomain()).days().filter(days -> days.known().length >= ASSUMED_FEWEST_DAYS);
    }

    private List<MeterReading> rows() {
        return IntStream.range(0, readings.size()).mapToObj(i -> readings.get(i).toDomain(i + 1)).toList();
    }

    private Meter toDomain() {
        return new Meter(kind, ZoneId.of(meter.timeZone() == null ? MeterRequest.UTC : meter.timeZone()),
                meter.unit().definition().factor(), meter.rolloverAt() == null ? OptionalDouble.empty()
                : OptionalDouble.of(meter.rolloverAt().doubleValue()),
                Optional.ofNullable(meter.intervalMinutes()).map(Duration::ofMinutes));
    }
}
