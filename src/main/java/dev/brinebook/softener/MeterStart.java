// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.MeteredImmediate;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.TwinAlternating;

/** When a meter starts a regeneration. */
public enum MeterStart {
    /** At the hour of regeneration of the night after its count is exhausted to the reserve. */
    DELAYED {
        @Override
        Policy policy(double meterLitres, double reserveLitres, int overrideDays) {
            return new MeteredDelayed(meterLitres, reserveLitres, overrideDays);
        }
    },
    /** At once. */
    IMMEDIATE {
        @Override
        Policy policy(double meterLitres, double reserveLitres, int overrideDays) {
            return new MeteredImmediate(meterLitres, overrideDays);
        }
    },
    /** At once, while a second bed takes over. */
    TWIN {
        @Override
        Policy policy(double meterLitres, double reserveLitres, int overrideDays) {
            return new TwinAlternating(meterLitres, overrideDays);
        }
    };

    abstract Policy policy(double meterLitres, double reserveLitres, int overrideDays);

    /** The start of the existing meter; a clock is replaced by a delayed meter. */
    public static MeterStart of(Policy found) {
        return found.softensMeanwhile() ? TWIN : found.startsAtOnce() ? IMMEDIATE : DELAYED;
    }
}
