// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.OptionalResult;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.text.Message;

/**
 * The reserve of a delayed meter that nobody has read.
 *
 * <p>A meter that counts more than its bed softens has no more in reserve for that: whoever set a wrong hardness did not know it. So its
 * reserve is the one that it would need if it were set correctly. Where no reserve meets the service standard, the mean use of a day
 * is assumed.
 * Source: common practice, a day of use in reserve; the rest is an assumption of this project.
 *
 * @param litres the reserve
 * @param inWords how it was found
 */
public record AssumedReserve(double litres, Message inWords) {

    /** The reserve of a meter that counts {@code meterLitres}. */
    public static AssumedReserve of(double meterLitres, int overrideDays, Regeneration regeneration, DesignConditions duty) {
        double rightLitres = MeterSettings.meterLitres(regeneration.capacityGrams(), duty);
        boolean countsTooMuch = meterLitres > rightLitres;
        OptionalResult smallest = MeterSettings.smallestReserve(new MeteredDelayed(countsTooMuch ? rightLitres : meterLitres, 0,
                overrideDays), regeneration, duty, 0);
        if (!smallest.exists()) {
            return new AssumedReserve(Math.min(duty.meanLitres(), meterLitres), Message.of("reserveRule.meanDay"));
        }
        return new AssumedReserve(smallest.value(), countsTooMuch ? Message.of("assumed.softener.smallestReserveOfCorrectMeter")
                : Message.of("assumed.softener.smallestReserveMeetsService"));
    }
}
