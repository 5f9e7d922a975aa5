// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.quantity.MolarMass;
import dev.brinebook.water.chemistry.AlkalinityForms;
import dev.brinebook.water.chemistry.Composition;
import dev.brinebook.water.chemistry.Ion;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One water, each parameter once. What was not tested is absent.
 *
 * @param estimates value and standard uncertainty of each parameter, in the unit that it is calculated with
 */
public record Sample(Map<Parameter, Estimate> estimates) {

    private static final double CALCIUM_CARBONATE = MolarMass.grams("CaCO3");

    public Sample {
        EnumMap<Parameter, Estimate> copy = new EnumMap<>(Parameter.class);
        copy.putAll(estimates);
        estimates = Collections.unmodifiableMap(copy);
    }

    /** The same with another value of one parameter. */
    public Sample with(Parameter parameter, Estimate changed) {
        EnumMap<Parameter, Estimate> copy = new EnumMap<>(Parameter.class);
        copy.putAll(estimates);
        copy.put(parameter, changed);
        return new Sample(copy);
    }

    /** The same without the parameters. */
    Sample without(Set<Parameter> parameters) {
        EnumMap<Parameter, Estimate> copy = new EnumMap<>(Parameter.class);
        copy.putAll(estimates);
        copy.keySet().removeAll(parameters);
        return new Sample(copy);
    }

    /** The same with the dissolved part of iron and manganese, where no filtered sample says it but what was seen does. */
    public Sample seen(MetalForm form) {
        return seen(form, Parameter.IRON, Parameter.IRON_DISSOLVED).seen(form, Parameter.MANGANESE, Parameter.MANGANESE_DISSOLVED);
    }

    private Sample seen(MetalForm form, Parameter all, Parameter dissolved) {
        OptionalDouble share = form.dissolvedMgPerL(value(all), value(dissolved));
        return has(dissolved) || share.isEmpty() ? this : with(dissolved, new Estimate(share.getAsDouble(), 0));
    }

    public boolean has(Parameter parameter) {
        return estimates.containsKey(parameter);
    }

    /** The value of a parameter, where it was tested. */
    public OptionalDouble value(Parameter parameter) {
        Estimate estimate = estimates.get(parameter);
        return estimate == null ? OptionalDouble.empty() : OptionalDouble.of(estimate.value());
    }

    /** The value of a parameter, 0 where it was not tested. */
    public double orZero(Parameter parameter) {
        return value(parameter).orElse(0);
    }

    /**
     * The ions that count in a balance. Alkalinity counts once: by its ions where they are printed, else divided by its two titrations,
     * else as bicarbonate. Iron and manganese count as far as dissolved; of what was not filtered all is taken as dissolved.
     */
    public Composition composition() {
        Map<Ion, Double> ions = new EnumMap<>(Ion.class);
        estimates.forEach((parameter, estimate) -> parameter.ion().ifPresent(ion -> ions.put(ion, estimate.value())));
        value(has(Parameter.IRON_DISSOLVED) ? Parameter.IRON_DISSOLVED : Parameter.IRON).ifPresent(iron -> ions.put(Ion.IRON, iron));
        value(has(Parameter.MANGANESE_DISSOLVED) ? Parameter.MANGANESE_DISSOLVED : Parameter.MANGANESE)
                .ifPresent(manganese -> ions.put(Ion.MANGANESE, manganese));
        if (!has(Parameter.BICARBONATE) && has(Parameter.ALKALINITY)) {
            double total = orZero(Parameter.ALKALINITY);
            AlkalinityForms forms = AlkalinityForms.of(Math.min(orZero(Parameter.ALKALINITY_TO_PH_8), total), total);
            ions.put(Ion.BICARBONATE, forms.bicarbonateMgPerL() * MolarMass.grams("2HCO3") / CALCIUM_CARBONATE);
            ions.put(Ion.CARBONATE, forms.carbonateMgPerL() * MolarMass.grams("CO3") / CALCIUM_CARBONATE);
            ions.put(Ion.HYDROXIDE, forms.hydroxideMgPerL() * MolarMass.grams("2OH") / CALCIUM_CARBONATE);
        }
        Composition composition = new Composition(ions);
        return has(Parameter.PH) ? composition.withHydrogenOf(orZero(Parameter.PH)) : composition;
    }

    /** Standard uncertainty of each ion, mg/L. */
    public Map<Ion, Double> ionUncertainties() {
        Map<Ion, Double> uncertainties = new EnumMap<>(Ion.class);
        estimates.forEach((parameter, estimate) -> parameter.ion()
                .ifPresent(ion -> uncertainties.put(ion, estimate.standardUncertainty())));
        uncertainties.putAll(ofMetal(Ion.IRON, Parameter.IRON_DISSOLVED, Parameter.IRON));
        uncertainties.putAll(ofMetal(Ion.MANGANESE, Parameter.MANGANESE_DISSOLVED, Parameter.MANGANESE));
        if (!has(Parameter.BICARBONATE) && has(Parameter.ALKALINITY)) {
            uncertainties.put(Ion.BICARBONATE, estimates.get(Parameter.ALKALINITY).standardUncertainty()
                    * MolarMass.grams("2HCO3") / CALCIUM_CARBONATE);
        }
        return uncertainties;
    }

    private Map<Ion, Double> ofMetal(Ion ion, Parameter dissolved, Parameter all) {
        Estimate counted = estimates.get(has(dissolved) ? dissolved : all);
        return counted == null ? Map.of() : Map.of(ion, counted.standardUncertainty());
    }

    /** Alkalinity, mg/L as CaCO3: stated, or of its ions. */
    public OptionalDouble alkalinityMgPerL() {
        return has(Parameter.ALKALINITY) ? value(Parameter.ALKALINITY)
                : has(Parameter.BICARBONATE) ? OptionalDouble.of(composition().alkalinityMgPerL()) : OptionalDouble.empty();
    }

    /** Hardness of calcium and magnesium, mg/L as CaCO3, where both were tested. */
    public OptionalDouble ionHardnessMgPerL() {
        return has(Parameter.CALCIUM) && has(Parameter.MAGNESIUM) ? OptionalDouble.of(composition().hardnessMgPerL())
                : OptionalDouble.empty();
    }

    /** The hardness of {@link CombinedHardness}, where it took the place of what was stated; else that of {@link #hardnessMgPerL}. */
    OptionalDouble hardnessToGoByMgPerL() {
        return has(Parameter.HARDNESS) ? value(Parameter.HARDNESS) : hardnessMgPerL();
    }

    /** Hardness, mg/L as CaCO3: of the ions where both were tested, else stated. */
    public OptionalDouble hardnessMgPerL() {
        return ionHardnessMgPerL().isPresent() ? ionHardnessMgPerL() : value(Parameter.HARDNESS);
    }
}
