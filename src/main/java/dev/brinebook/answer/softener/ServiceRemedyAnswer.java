package dev.brinebook.answer.softener;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.softener.ServiceRemedy;
import java.math.BigDecimal;
import java.util.Currency;

@About("What would keep to the service standard where no setting does. What it costs to buy is not in it.")
public record ServiceRemedyAnswer(
        @Property("What: the smallest standard bed that is large enough, a second bed of the same size, or water treated before"
                + " the softener.") ServiceRemedy.Kind kind,
        @Property("Resin in it; of twin beds in each.") VolumeQuantity resinVolume,
        @Property("Salt dose with it.") SaltDoseQuantity saltDose,
        @Property("Compensated hardness of the water that then reaches the softener, at most.") HardnessQuantity hardness,
        @Property(value = "Hard days then to be expected in a year.", min = 0, unit = "days a year", example = "0.9")
        BigDecimal hardDaysPerYear,
        @Property("Salt and regeneration water of a year with it.") Money runningCostPerYear) {

    static ServiceRemedyAnswer of(ServiceRemedy remedy, Currency currency, AnswerUnits units) {
        return new ServiceRemedyAnswer(remedy.kind(), units.resinVolume(remedy.softener().bed().resinLitres()),
                units.saltDose(remedy.saltDoseGramsPerLitre()), units.hardness(remedy.hardnessMgPerL()),
                Rounding.toThousandth(remedy.year().hardDays()), Money.of(remedy.costPerYear(), currency));
    }
}
