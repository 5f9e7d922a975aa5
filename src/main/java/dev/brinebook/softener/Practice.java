// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.regeneration.Policy;

/**
 * How a softener is judged where the callable versions of the model, or the countries, differ.
 *
 * @param countsDaysOfUse whether iron and manganese are counted on the days on which water runs; else on every day
 * @param setsWeekdays whether a clock that counts weekdays, or seven days, is set to the weekdays that suit the week best
 * @param replacesTooSmall whether a softener that is too small is replaced rather than set at a higher cost
 * @param mostIdleDays days after which it regenerates whatever was used
 */
public record Practice(boolean countsDaysOfUse, boolean setsWeekdays, boolean replacesTooSmall, int mostIdleDays) {

    /** The usual one. */
    public static final Practice USUAL = new Practice(true, true, true, Policy.DEFAULT_OVERRIDE_DAYS);

    public Practice {
        Guard.within(mostIdleDays, 1, Policy.MAX_INTERVAL_DAYS, "mostIdleDays");
    }
}
