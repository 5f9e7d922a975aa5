// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.chemistry;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.AtomicWeights;
import dev.brinebook.water.Hardness;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The ions dissolved in a water. An ion that was not determined is absent, never zero; alkalinity is here once, as the ions that it
 * consists of.
 *
 * @param mgPerL mg/L of each ion itself
 */
public record Composition(Map<Ion, Double> mgPerL) {

    private static final double HYDROGEN_COUNTS_BELOW_PH = 5;

    public Composition {
        EnumMap<Ion, Double> copy = new EnumMap<>(Ion.class);
        copy.putAll(mgPerL);
        copy.forEach((ion, value) -> Guard.notNegative(value, ion.name()));
        mgPerL = Collections.unmodifiableMap(copy);
    }

    /** The same with another amount of one ion. */
    public Composition with(Ion ion, double changedMgPerL) {
        EnumMap<Ion, Double> changed = new EnumMap<>(Ion.class);
        changed.putAll(mgPerL);
        changed.put(ion, changedMgPerL);
        return new Composition(changed);
    }

    /** The same with {@code factor} times as much of some ions, as far as they are there. */
    public Composition times(double factor, Set<Ion> ions) {
        EnumMap<Ion, Double> changed = new EnumMap<>(Ion.class);
        mgPerL.forEach((ion, value) -> changed.put(ion, value * (ions.contains(ion) ? factor : 1)));
        return new Composition(changed);
    }

    /** The same with the hydrogen ions of an acid water, which count below pH 5 only. */
    public Composition withHydrogenOf(double ph) {
        return ph < HYDROGEN_COUNTS_BELOW_PH ? with(Ion.HYDROGEN, 1000 * StrictMath.pow(10, -ph) * AtomicWeights.HYDROGEN) : this;
    }

    public boolean has(Ion ion) {
        return mgPerL.containsKey(ion);
    }

    /** mg/L of an ion, 0 when it was not determined. */
    public double mgPerL(Ion ion) {
        return mgPerL.getOrDefault(ion, 0.0);
    }

    public double meqPerL(Ion ion) {
        return mgPerL(ion) / ion.mgPerMeq();
    }

    public double cationsMeqPerL() {
        return sum(Ion.all(true));
    }

    public double anionsMeqPerL() {
        return sum(Ion.all(false));
    }

    private double sum(List<Ion> ions) {
        return ions.stream().mapToDouble(this::meqPerL).sum();
    }

    /** Those that a balance cannot do without and that are absent; carbonate and hydroxide stand for bicarbonate too. */
    public Set<Ion> missing() {
        EnumSet<Ion> missing = EnumSet.copyOf(Ion.INDISPENSABLE);
        missing.removeAll(mgPerL.keySet());
        if (has(Ion.CARBONATE) || has(Ion.HYDROXIDE)) {
            missing.remove(Ion.BICARBONATE);
        }
        return missing;
    }

    /** Alkalinity, mg/L as CaCO3. */
    public double alkalinityMgPerL() {
        return sum(List.of(Ion.BICARBONATE, Ion.CARBONATE, Ion.HYDROXIDE)) * AtomicWeights.CALCIUM_CARBONATE / 2;
    }

    /** Hardness of calcium and magnesium, mg/L as CaCO3, by [SM2340B]. */
    public double hardnessMgPerL() {
        return Hardness.fromIonsMgPerL(mgPerL(Ion.CALCIUM), mgPerL(Ion.MAGNESIUM));
    }

    /** Share of the sum of cations, by equivalents; 0 of a water without any. */
    public double cationShare(Ion ion) {
        double all = cationsMeqPerL();
        return all > 0 ? meqPerL(ion) / all : 0;
    }

    /** Ionic strength, mol/L: half the sum of c z². */
    public double ionicStrengthMolPerL() {
        return mgPerL.keySet().stream().mapToDouble(ion -> ion.charges() * meqPerL(ion)).sum() / 2000;
    }

    /**
     * Conductivity at 25 °C.
     *
     * <pre>k0 = Σ λ m;  y = 10^(−0.5 (√I/(1 + √I) − 0.3 I));  EC = k0 y²</pre>
     *
     * <p>EC µS/cm; λ µS/cm per meq/L; m meq/L; I ionic strength, mol/L.
     * Validity: below 0.1 mol/L; no ion pairs, so that waters with much sulfate read high.
     * Source: [SM2510], its constants from memory.
     */
    public double conductivity() {
        double diluted = mgPerL.keySet().stream().mapToDouble(ion -> ion.conductivityPerMeq() * meqPerL(ion)).sum();
        double strength = ionicStrengthMolPerL();
        double root = Math.sqrt(strength);
        double activity = StrictMath.pow(10, -0.5 * (root / (1 + root) - 0.3 * strength));
        return diluted * activity * activity;
    }

    /**
     * Dissolved solids as a residue of evaporation has them, where bicarbonate leaves half of its carbon dioxide.
     *
     * <pre>TDS = Ca + Mg + Na + K + Cl + SO4 + NO3 + F + SiO2 + 0.600 alkalinity</pre>
     *
     * <p>mg/L; alkalinity as CaCO3. Iron and manganese below 1 mg/L are left out, as the method does.
     * Source: [SM1030E].
     */
    public double residueMgPerL(double silicaMgPerL) {
        double ions = List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM, Ion.POTASSIUM, Ion.CHLORIDE, Ion.SULFATE, Ion.NITRATE, Ion.FLUORIDE)
                .stream().mapToDouble(this::mgPerL).sum();
        return ions + silicaMgPerL + alkalinityMgPerL() * Ion.CARBONATE.mgPerMmol() / AtomicWeights.CALCIUM_CARBONATE;
    }
}
