package dev.brinebook.answer.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.HighDay;
import java.time.LocalDate;

@About("A day of more than four times the median day, as of a leak or a filling. What is expected takes it as four times that day.")
public record HighDayAnswer(
        @Property(value = "The day.", example = "\"2026-05-02\"") LocalDate date,
        @Property("What the meter saw.") VolumeQuantity use,
        @Property("What of it is above that and left out of what is expected.") VolumeQuantity above) {

    /** The day in the units of the answer. */
    public static HighDayAnswer of(HighDay day, AnswerUnits units) {
        return new HighDayAnswer(day.date(), units.volume(day.litres()), units.volume(day.aboveLitres()));
    }
}
