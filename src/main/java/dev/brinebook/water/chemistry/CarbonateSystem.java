// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.chemistry;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.AtomicWeights;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Carbon dioxide, bicarbonate and carbonate of a water, and what they do to calcite. Closed to the air, without ion pairs, which
 * move a saturation index by up to 0.05 in hard water with much sulfate.
 *
 * <p>Saturation indices are guides for scale. They say nothing of lead or copper.
 * Source: [PLUMMER-BUSENBERG-1982] for the constants, [DAVIES-1962] for the activities, [SM2330] for the indices.
 *
 * @param celsius temperature, 0 to 90 °C
 * @param ph pH at that temperature, 0 to 14
 * @param alkalinityMolPerL alkalinity, mol of charges per litre; negative in a water with free acid
 * @param calciumMolPerL calcium
 * @param strengthMolPerL ionic strength, which is held where calcite precipitates or dissolves
 */
public record CarbonateSystem(double celsius, double ph, double alkalinityMolPerL, double calciumMolPerL, double strengthMolPerL) {

    private static final double MAX_PH = 14;
    /** Most calcite that a water is let dissolve, mol/L: ten times what hard ground water holds. */
    private static final double MOST_DISSOLVED_MOL_PER_L = 0.02;
    private static final double NEARLY_ALL = 1 - 1e-9;
    private static final int MOST_STEPS = 200;
    /** Stands for the index of a water without any carbonate, below that of every other. */
    private static final double NO_CARBONATE_LEFT = -100;
    private static final double MG_PER_MOL_OF_CALCITE = 1000 * AtomicWeights.CALCIUM_CARBONATE;
    private static final double MG_PER_MOL_OF_CARBON_DIOXIDE = 1000 * (AtomicWeights.CARBON + 2 * AtomicWeights.OXYGEN);

    public CarbonateSystem {
        Guard.within(celsius, CarbonateConstants.MIN_CELSIUS, CarbonateConstants.MAX_CELSIUS, "celsius");
        Guard.within(ph, 0, MAX_PH, "ph");
        Guard.finite(alkalinityMolPerL, "alkalinityMolPerL");
        Guard.notNegative(calciumMolPerL, "calciumMolPerL");
        Guard.within(strengthMolPerL, 0, Activity.MAX_STRENGTH_MOL_PER_L, "strengthMolPerL");
    }

    /** The water of a report: alkalinity in mg/L as CaCO3, calcium in mg/L. */
    public static CarbonateSystem ofReport(double celsius, double ph, double alkalinityMgPerL, double calciumMgPerL,
            double strengthMolPerL) {
        return new CarbonateSystem(celsius, ph, alkalinityMgPerL * 2 / MG_PER_MOL_OF_CALCITE,
                calciumMgPerL / (1000 * AtomicWeights.CALCIUM), strengthMolPerL);
    }

    /** The water whose inorganic carbon was determined, mol/L, instead of its alkalinity. */
    public static CarbonateSystem ofInorganicCarbon(double celsius, double ph, double carbonMolPerL, double calciumMolPerL,
            double strengthMolPerL) {
        Shares shares = Shares.at(celsius, ph, strengthMolPerL);
        return new CarbonateSystem(celsius, ph, shares.alkalinity(carbonMolPerL), calciumMolPerL, strengthMolPerL);
    }

    /** How a mole of inorganic carbon divides at a pH, and the charges of the water itself. */
    private record Shares(double dioxide, double bicarbonate, double carbonate, double hydroxideLessHydrogen) {

        static Shares at(double celsius, double ph, double strengthMolPerL) {
            CarbonateConstants constants = CarbonateConstants.at(celsius);
            Activity activity = Activity.at(strengthMolPerL, celsius);
            double hydrogen = StrictMath.pow(10, -ph);
            double perBicarbonate = hydrogen * activity.single() / StrictMath.pow(10, -constants.pk1());
            double carbonate = StrictMath.pow(10, -constants.pk2()) * activity.single() / (hydrogen * activity.twice());
            double all = perBicarbonate + 1 + carbonate;
            double water = StrictMath.pow(10, -constants.pkWater()) / (hydrogen * activity.single()) - hydrogen / activity.single();
            return new Shares(perBicarbonate / all, 1 / all, carbonate / all, water);
        }

        double alkalinity(double carbonMolPerL) {
            return carbonMolPerL * (bicarbonate + 2 * carbonate) + hydroxideLessHydrogen;
        }
    }

    private Shares shares() {
        return Shares.at(celsius, ph, strengthMolPerL);
    }

    /** Inorganic carbon in all its forms, mol/L; 0 where the alkalinity is not of carbonate. */
    public double inorganicCarbonMolPerL() {
        Shares shares = shares();
        return Math.max(0, (alkalinityMolPerL - shares.hydroxideLessHydrogen()) / (shares.bicarbonate() + 2 * shares.carbonate()));
    }

    public double carbonDioxideMgPerL() {
        return inorganicCarbonMolPerL() * shares().dioxide() * MG_PER_MOL_OF_CARBON_DIOXIDE;
    }

    /**
     * Saturation index of calcite: 0 in equilibrium, positive where it can precipitate. None without calcium or carbonate.
     *
     * <pre>SI = log10(γ2 c(Ca) γ2 c(CO3)) + pKs</pre>
     */
    public OptionalDouble calciteIndex() {
        return index(CarbonateConstants.at(celsius).pkCalcite());
    }

    /** The same of aragonite, which precipitates first from hot water. */
    public OptionalDouble aragoniteIndex() {
        return index(CarbonateConstants.at(celsius).pkAragonite());
    }

    private OptionalDouble index(double solubility) {
        double carbonate = inorganicCarbonMolPerL() * shares().carbonate();
        double twice = Activity.at(strengthMolPerL, celsius).twice();
        double product = twice * calciumMolPerL * twice * carbonate;
        return product > 0 ? OptionalDouble.of(StrictMath.log10(product) + solubility) : OptionalDouble.empty();
    }

    /** pH at which this water would be in equilibrium with calcite if its bicarbonate stayed; none without calcium or carbonate. */
    public OptionalDouble saturationPh() {
        OptionalDouble index = calciteIndex();
        return index.isPresent() ? OptionalDouble.of(ph - index.getAsDouble()) : index;
    }

    /** Stability index: twice the saturation pH less the pH; below 6 scale, above 7 none. */
    public OptionalDouble stabilityIndex() {
        OptionalDouble saturation = saturationPh();
        return saturation.isPresent() ? OptionalDouble.of(2 * saturation.getAsDouble() - ph) : saturation;
    }

    /** The same water, warmed or cooled in a closed vessel; none where no pH holds its carbon and alkalinity there. */
    public Optional<CarbonateSystem> at(double otherCelsius) {
        return holding(otherCelsius, alkalinityMolPerL, inorganicCarbonMolPerL(), calciumMolPerL);
    }

    /** The same water after {@code mol} of calcite per litre precipitated, or dissolved where it is negative. */
    private Optional<CarbonateSystem> lessCalcite(double mol) {
        return holding(celsius, alkalinityMolPerL - 2 * mol, inorganicCarbonMolPerL() - mol, calciumMolPerL - mol);
    }

    private Optional<CarbonateSystem> holding(double otherCelsius, double alkalinity, double carbon, double calcium) {
        OptionalDouble holds = root(other -> Shares.at(otherCelsius, other, strengthMolPerL).alkalinity(carbon) - alkalinity, 0, MAX_PH);
        return holds.isEmpty() ? Optional.empty()
                : Optional.of(new CarbonateSystem(otherCelsius, holds.getAsDouble(), alkalinity, calcium, strengthMolPerL));
    }

    /** The water in equilibrium with calcite: after scale has formed, or after a bed of calcite has neutralised it. */
    public Optional<CarbonateSystem> inEquilibrium() {
        OptionalDouble mol = precipitatedMol();
        return mol.isEmpty() ? Optional.empty() : lessCalcite(mol.getAsDouble());
    }

    /** Calcite that can precipitate, mg/L as CaCO3; negative for what can dissolve. None where no equilibrium is near. */
    public OptionalDouble precipitationPotentialMgPerL() {
        OptionalDouble mol = precipitatedMol();
        return mol.isEmpty() ? mol : OptionalDouble.of(mol.getAsDouble() * MG_PER_MOL_OF_CALCITE);
    }

    /** Carbon dioxide that attacks lime: one mole for each mole of calcite that the water can dissolve, mg/L. */
    public OptionalDouble aggressiveCarbonDioxideMgPerL() {
        OptionalDouble mol = precipitatedMol();
        return mol.isEmpty() ? mol : OptionalDouble.of(Math.max(0, -mol.getAsDouble()) * MG_PER_MOL_OF_CARBON_DIOXIDE);
    }

    private OptionalDouble precipitatedMol() {
        double most = NEARLY_ALL * Math.min(calciumMolPerL, inorganicCarbonMolPerL());
        return root(mol -> lessCalcite(mol).map(CarbonateSystem::calciteIndex).orElse(OptionalDouble.empty()).orElse(NO_CARBONATE_LEFT),
                -MOST_DISSOLVED_MOL_PER_L, most);
    }

    private static OptionalDouble root(DoubleUnaryOperator function, double low, double high) {
        boolean brackets = function.applyAsDouble(low) * function.applyAsDouble(high) <= 0;
        return brackets ? OptionalDouble.of(new BracketingNthOrderBrentSolver(1e-12, 1e-12, 5)
                .solve(MOST_STEPS, function::applyAsDouble, low, high)) : OptionalDouble.empty();
    }
}
