package dev.brinebook.operation.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.Country;
import dev.brinebook.household.DayVariation;
import dev.brinebook.quantity.Rounding;
import java.math.BigDecimal;

@About("The household beside what is usual.")
public record UsualUse(
        @Property("Mean use of a person and day with somebody there.") VolumeQuantity perPerson,
        @Property("What is usual indoors.") VolumeQuantity usualPerPerson,
        @Property(value = "The usual scatter of the days of so many people.", min = 0, example = "0.42")
        BigDecimal usualDayToDayVariation) {

    static UsualUse of(double occupiedMeanLitres, int people, Country country, AnswerUnits units) {
        return new UsualUse(units.volume(occupiedMeanLitres / people), units.volume(country.usePerPersonLitres()),
                Rounding.answer(DayVariation.forPersons(people).cv()));
    }
}
