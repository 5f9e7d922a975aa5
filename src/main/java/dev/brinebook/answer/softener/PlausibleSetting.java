package dev.brinebook.answer.softener;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.Question;
import dev.brinebook.softener.Setting;
import dev.brinebook.softener.Softener;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("What a setting that was not given may be, and a year with it, all else as found.")
public record PlausibleSetting(
        @Property(value = "What may be set.", example = "\"6 lb/ft3\"") Message set,
        @Property("Salt to be expected in a year.") MassQuantity saltPerYear,
        @Property(value = "Hard days to be expected in a year.", min = 0, unit = "days a year", example = "3")
        BigDecimal hardDaysPerYear) {

    static PlausibleSetting of(Setting setting, Question.End end, Softener softener, Duty duty, AnswerUnits units) {
        var totals = end.year().totals();
        return new PlausibleSetting(SettingFinding.text(setting, end.value(), softener,
                new ControllerQuantities(duty, units)), units.mass(totals.saltGrams() / 1000),
                Rounding.toThousandth(totals.hardDays()));
    }
}
