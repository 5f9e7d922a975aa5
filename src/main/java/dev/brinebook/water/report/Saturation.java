// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.chemistry.Activity;
import dev.brinebook.water.chemistry.CarbonateSystem;
import java.util.Optional;

/**
 * What a water does to lime as it is, after softening, and after a bed of calcite has neutralised it.
 *
 * <p>Softening takes calcium and leaves pH and alkalinity: the index falls, which says nothing of lead or copper. [EPA-600-R-98-044]
 * found no pattern of more metal from softened water, [MN-HEALTH] warns of it.
 *
 * @param raw the water as tested
 * @param softened the same after softening
 * @param neutralised the raw water in equilibrium with calcite, where it can dissolve some
 */
public record Saturation(CarbonateSystem raw, CarbonateSystem softened, Optional<CarbonateSystem> neutralised) {

    /** Calcium that a softener leaves, mg/L. */
    public static final double ASSUMED_SOFTENED_CALCIUM_MG_PER_L = 0.5;
    /** Temperature of a water heater. */
    public static final double ASSUMED_HOT_CELSIUS = 60;
    /** Outside these the alkalinity is not of carbonate. */
    private static final double LEAST_PH = 4.5;
    private static final double MOST_PH = 11;

    /** The states of a sample with pH, alkalinity and calcium. */
    public static Optional<Saturation> of(Sample sample) {
        return carbonate(sample).map(raw -> {
            CarbonateSystem softened = CarbonateSystem.ofReport(raw.celsius(), raw.ph(), sample.alkalinityMgPerL().getAsDouble(),
                    Math.min(ASSUMED_SOFTENED_CALCIUM_MG_PER_L, sample.orZero(Parameter.CALCIUM)), raw.strengthMolPerL());
            boolean dissolves = raw.precipitationPotentialMgPerL().orElse(0) < 0;
            return new Saturation(raw, softened, dissolves ? raw.inEquilibrium() : Optional.empty());
        });
    }

    /** Hardness that neutralising adds, mg/L as CaCO3; 0 where there is nothing to neutralise. */
    public double neutralisingAddsMgPerL() {
        return neutralised.isEmpty() ? 0 : -raw.precipitationPotentialMgPerL().orElse(0);
    }

    /** The carbonate system of a sample with pH, alkalinity and calcium. */
    static Optional<CarbonateSystem> carbonate(Sample sample) {
        double ph = sample.orZero(Parameter.PH);
        if (!(ph >= LEAST_PH && ph <= MOST_PH) || sample.alkalinityMgPerL().isEmpty() || !sample.has(Parameter.CALCIUM)) {
            return Optional.empty();
        }
        return Optional.of(CarbonateSystem.ofReport(celsius(sample), ph, sample.alkalinityMgPerL().getAsDouble(),
                sample.orZero(Parameter.CALCIUM), strengthMolPerL(sample)));
    }

    /** Temperature of a sample; that of ground water where none is stated. */
    static double celsius(Sample sample) {
        return Math.max(0, sample.value(Parameter.TEMPERATURE).orElse(WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS));
    }

    /** Ionic strength: of the ions where they are complete, else of the conductivity or the dissolved solids, else of what is known. */
    static double strengthMolPerL(Sample sample) {
        double known = sample.composition().ionicStrengthMolPerL();
        double guessed = sample.composition().missing().isEmpty() ? known : sample.has(Parameter.CONDUCTIVITY)
                ? Activity.STRENGTH_PER_CONDUCTIVITY * sample.orZero(Parameter.CONDUCTIVITY)
                : sample.has(Parameter.DISSOLVED_SOLIDS) ? Activity.STRENGTH_PER_SOLIDS * sample.orZero(Parameter.DISSOLVED_SOLIDS) : known;
        return Math.min(guessed, Activity.MAX_STRENGTH_MOL_PER_L);
    }
}
