package dev.brinebook.answer.verdict;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.wording.Message;

/** Source: [WT-2014-DEMAND]. */
@About("What others report of such conversions, to stand beside the case's own figure.")
public record PublishedSaving(
        @Property(value = "Lower end of the salt saved by a meter over a clock.", min = 0, max = 100, unit = "%", example = "25")
        Integer fromPercent,
        @Property(value = "Upper end.", min = 0, max = 100, unit = "%", example = "50") Integer toPercent,
        @Property(value = "The same in a sentence.", example = "\"Published figures: 25 to 50 % less salt than a clock.\"")
        Message sentence) {

    private static final int FROM_PERCENT = 25;
    private static final int TO_PERCENT = 50;

    static PublishedSaving of(String pointer, Explanation explanation) {
        explanation.because(pointer, Message.of("published figures of metered controls against clocks; settings alone cut chloride by 27 %"
                + " on average in one district, replacing the softener by 47 %"), "WT-2014-DEMAND");
        return new PublishedSaving(FROM_PERCENT, TO_PERCENT, Message.of("Published figures: {0} to {1} % less salt than a clock.",
                FROM_PERCENT, TO_PERCENT));
    }
}
