// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.regeneration;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.HardDays;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("Range of hard days in 9 of 10 years.")
public record HardDaysRange(
        @Property(value = "Hard days at or below which 1 of 20 years stays.", min = 0, max = 366, unit = "days", example = "0")
        Integer from,
        @Property(value = "Hard days that 1 of 20 years exceeds.", min = 0, max = 366, unit = "days", example = "3") Integer to,
        @Property(value = "Share of the years without a hard day.", min = 0, max = 100, unit = "%", example = "37")
        BigDecimal yearsWithoutPercent,
        @Property(value = "Hard days per year if the use of this home stays at its level. The expected hard days also allow "
                + "for changes.", min = 0, max = 366, unit = "days a year", example = "0.4") BigDecimal ifHomeStaysTheSame,
        @Property(value = "Both in one line.", example = "\"Hard days a year: 0.4 with steady use, 1 with the usual changes in "
                + "use.\"")
        Message sentence) {

    /** The range in the units of the answer. */
    public static HardDaysRange of(HardDays days) {
        BigDecimal stays = Rounding.toThousandth(days.perYearIfItStays());
        return new HardDaysRange(days.percentile5(), days.percentile95(), Rounding.answer(100 * days.yearsWithoutShare()), stays,
                Message.of("hardDaysRange.hardDaysYearIf",
                        Text.hardDays(stays.doubleValue()), Text.hardDays(days.perYear())));
    }
}
