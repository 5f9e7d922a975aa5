// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.softener;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.softener.ServiceRemedy;
import java.math.BigDecimal;
import java.util.Currency;

@SchemaDescription("A remedy that would meet the service standard if no setting does. The purchase price is not included.")
public record ServiceRemedyAnswer(
        @Property("Kind of remedy: the smallest standard bed that is large enough, a second bed of the same "
                + "size, or treatment of the water before the softener.") ServiceRemedy.Kind kind,
        @Property("Resin volume. For twin tanks, the volume in each.") VolumeQuantity resinVolume,
        @Property("Salt dose with the remedy.") SaltDoseQuantity saltDose,
        @Property("Maximum compensated hardness of the water that then reaches the softener.") HardnessQuantity hardness,
        @Property(value = "Expected hard days per year with the remedy.", min = 0, unit = "days a year", example = "0.9")
        BigDecimal hardDaysPerYear,
        @Property("Cost of salt and regeneration water per year with the remedy.") Money runningCostPerYear) {

    static ServiceRemedyAnswer of(ServiceRemedy remedy, Currency currency, AnswerUnits units) {
        return new ServiceRemedyAnswer(remedy.kind(), units.resinVolume(remedy.softener().bed().resinLitres()),
                units.saltDose(remedy.saltDoseGramsPerLitre()), units.hardness(remedy.hardnessMgPerL()),
                Rounding.toThousandth(remedy.year().hardDays()), Money.of(remedy.costPerYear(), currency));
    }
}
