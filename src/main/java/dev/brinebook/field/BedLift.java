// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import dev.brinebook.guard.OptionalResult;
import dev.brinebook.resin.Backwash;
import dev.brinebook.resin.PressureDrop;
import dev.brinebook.resin.ResinBead;
import dev.brinebook.resin.ResinBed;

/** What measured flows do to the bed. */
public final class BedLift {

    private BedLift() {
    }

    /** Expansion of the bed by the drain flow in a tank of a width, or the reason why there is none. */
    public static OptionalResult expansionShare(double drainLitresPerMinute, double tankDiameterMetres, double celsius) {
        double velocity = new ResinBed(ResinBed.MIN_RESIN_LITRES, tankDiameterMetres).velocityMetresPerHour(drainLitresPerMinute);
        return Backwash.expansionShare(ResinBead.DEFAULT, velocity, celsius);
    }

    /** The same, the most that the formula covers where resin is carried out. */
    public static double expansionOrMost(double drainLitresPerMinute, double tankDiameterMetres, double celsius) {
        OptionalResult share = expansionShare(drainLitresPerMinute, tankDiameterMetres, celsius);
        return share.exists() ? Math.min(Backwash.MAX_EXPANSION_SHARE, share.value()) : Backwash.MAX_EXPANSION_SHARE;
    }

    /** Pressure that a flow loses in the clean bed, kPa. */
    public static double dropKilopascals(double resinLitres, double tankDiameterMetres, double litresPerMinute, double celsius) {
        return PressureDrop.pascals(new ResinBed(resinLitres, tankDiameterMetres), litresPerMinute, celsius) / 1000;
    }
}
