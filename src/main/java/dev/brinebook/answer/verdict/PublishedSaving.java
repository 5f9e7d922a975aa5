// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.verdict;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.text.Message;

/** Source: [WT-2014-DEMAND]. */
@SchemaDescription("Published savings of such conversions, for comparison with this case.")
public record PublishedSaving(
        @Property(value = "Lower end of the salt saved by a meter over a clock.", min = 0, max = 100, unit = "%", example = "25")
        Integer fromPercent,
        @Property(value = "Upper end.", min = 0, max = 100, unit = "%", example = "50") Integer toPercent,
        @Property(value = "The same in a sentence.", example = "\"Published figures: 25 to 50 % less salt than with a clock.\"")
        Message sentence) {

    private static final int FROM_PERCENT = 25;
    private static final int TO_PERCENT = 50;

    static PublishedSaving of() {
        return new PublishedSaving(FROM_PERCENT, TO_PERCENT, Message.of("publishedSaving.publishedFiguresLessSalt",
                FROM_PERCENT, TO_PERCENT));
    }
}
