// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.resin.Salt;

/** How saturated brine and water add up behind an injector of which both flows are known. */
public enum BrineMixing {

    /** Weights add up; the mixture has the density of brine of its strength. */
    BY_WEIGHT {
        @Override
        Mixture mix(Salt salt, double suctionShare, double brineTankTemperatureCelsius, double waterTemperatureCelsius) {
            double share = Injector.dilutedSaltShareByWeight(salt, suctionShare, brineTankTemperatureCelsius);
            return new Mixture(share, Injector.waterShare(salt, share, brineTankTemperatureCelsius, waterTemperatureCelsius));
        }
    },
    /** Volumes add up: up to 0.4 % off, so that the flows assumed did not give the answer when they were sent back. */
    BY_VOLUME {
        @Override
        Mixture mix(Salt salt, double suctionShare, double brineTankTemperatureCelsius, double waterTemperatureCelsius) {
            return new Mixture(Injector.dilutedSaltShare(salt, suctionShare, brineTankTemperatureCelsius, waterTemperatureCelsius),
                    1 - suctionShare);
        }
    };

    /**
     * What passes the bed.
     *
     * @param saltShare salt by weight
     * @param waterShare litres of water added for a litre of the mixture
     */
    record Mixture(double saltShare, double waterShare) {
    }

    /** The mixture of a saturated brine that is {@code suctionShare} of its volume. */
    abstract Mixture mix(Salt salt, double suctionShare, double brineTankTemperatureCelsius, double waterTemperatureCelsius);
}
