package dev.brinebook.answer.regeneration;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.HardDays;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("How far single years differ in hard days: nine years in ten lie in this range.")
public record HardDaysRange(
        @Property(value = "Hard days that one year in twenty stays below or at.", min = 0, max = 366, unit = "days", example = "0")
        Integer from,
        @Property(value = "Hard days that one year in twenty exceeds.", min = 0, max = 366, unit = "days", example = "3") Integer to,
        @Property(value = "Share of the years without a hard day.", min = 0, max = 100, unit = "%", example = "37")
        BigDecimal yearsWithoutPercent,
        @Property(value = "Hard days of a year as long as this home's use stays at its level; what is expected counts that homes"
                + " change.", min = 0, max = 366, unit = "days a year", example = "0.4") BigDecimal ifHomeStaysTheSame,
        @Property(value = "Both in one line.", example = "\"Hard days a year: 0.4 if this home stays as it is, 1 as homes change.\"")
        Message sentence) {

    /** The range in the units of the answer. */
    public static HardDaysRange of(HardDays days) {
        BigDecimal stays = Rounding.toThousandth(days.perYearIfItStays());
        return new HardDaysRange(days.percentile5(), days.percentile95(), Rounding.answer(100 * days.yearsWithoutShare()), stays,
                Message.of("Hard days a year: {0} if this home stays as it is, {1} as homes change.",
                        Text.number(stays.doubleValue()), Text.number(Rounding.toThousandth(days.perYear()).doubleValue())));
    }

    /** Says below {@code pointer} where the range comes from. */
    public static void explain(String pointer, Explanation explanation) {
        explanation.because(pointer, Message.of("chance of each number of hard days in a year, by the chances of each cycle on"
                + " each date; of settings that wait for no night or count too much, from fixed years"), "FELLER");
        explanation.because(pointer, Message.of("each year has one level of use: levels of homes differ over seasons and years, the"
                + " household's levelSpread"), "DAIAD");
    }
}
