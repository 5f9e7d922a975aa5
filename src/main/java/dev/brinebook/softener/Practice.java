// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.regeneration.Policy;

/**
 * How a softener is judged where the callable versions of the model, or the countries, differ.
 *
 * @param countsDaysOfUse whether iron and manganese are counted on the days on which water runs; else on every day
 *     and whether water that can be softened may still be advised to be treated
 * @param replacesTooSmall whether a softener that is too small is replaced rather than set at a higher cost
 * @param keepsCloseSettings whether settings that are close enough stay in the step that corrects the settings
 * @param mostIdleDays days after which it regenerates whatever was used
 */
public record Practice(boolean countsDaysOfUse, boolean replacesTooSmall, boolean keepsCloseSettings, int mostIdleDays) {

    /** The usual one. */
    public static final Practice USUAL = new Practice(true, true, true, Policy.DEFAULT_OVERRIDE_DAYS);

    public Practice {
        Guard.within(mostIdleDays, 1, Policy.MAX_INTERVAL_DAYS, "mostIdleDays");
    }

    /**
     * Whether the country asks for more regenerations than is common practice, for hygiene; there water is also usually blended to some
     * hardness. Source: [DIN-19636-100] from memory.
     */
    public boolean isByCountry() {
        return mostIdleDays < Policy.DEFAULT_OVERRIDE_DAYS;
    }
}
