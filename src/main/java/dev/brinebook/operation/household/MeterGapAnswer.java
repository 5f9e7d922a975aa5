package dev.brinebook.operation.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.MeterGap;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

@About("Days on end that are missing.")
public record MeterGapAnswer(
        @Property(value = "First of them.", example = "\"2026-02-03\"") LocalDate firstDate,
        @Property(value = "Last of them.", example = "\"2026-02-05\"") LocalDate lastDate,
        @Property(value = "How many.", min = 1, unit = "days", example = "3") Integer days,
        @Property(value = "What passed on all of them together.", optional = "when the meter does not tell")
        VolumeQuantity volume) {

    static MeterGapAnswer of(MeterGap gap, AnswerUnits units) {
        return new MeterGapAnswer(gap.firstDate(), gap.lastDate(),
                (int) ChronoUnit.DAYS.between(gap.firstDate(), gap.lastDate()) + 1,
                gap.litres().isPresent() ? units.volume(gap.litres().getAsDouble()) : null);
    }
}
