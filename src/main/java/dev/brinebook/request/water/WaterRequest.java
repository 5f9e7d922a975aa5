// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.water;

import dev.brinebook.api.Alternatives;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.TemperatureQuantity;
import dev.brinebook.caution.Caution;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.text.Message;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.water.Hardness;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterAnalysis.IronForm;
import dev.brinebook.water.WaterAnalysis.Supply;
import dev.brinebook.water.WaterCautions;
import java.math.BigDecimal;
import java.util.OptionalDouble;

@SchemaDescription("A water test. Omit values that were not tested. No value is taken as zero without a note in the answer.")
@Alternatives(value = {"hardness", "calcium + magnesium"}, required = true)
public record WaterRequest(
        @Property(value = "Tested hardness, from calcium and magnesium. Give this, or calcium and magnesium.", min = 0,
                max = Hardness.MAX_MG_PER_L, unit = "mg/L") HardnessQuantity hardness,
        @Property(value = "Calcium. Give it with magnesium, instead of hardness.", min = 0,
                max = Hardness.MAX_ION_MG_PER_L, unit = "mg/L") ConcentrationQuantity calcium,
        @Property(value = "Magnesium. Give it with calcium, instead of hardness.", min = 0,
                max = Hardness.MAX_ION_MG_PER_L, unit = "mg/L") ConcentrationQuantity magnesium,
        @Property(value = "Uncertainty of the hardness test. A drop test resolves 1 gpg.", min = 0,
                max = WaterAnalysis.MAX_UNCERTAINTY_MG_PER_L, unit = "mg/L",
                byDefault = WaterAnalysis.ASSUMED_UNCERTAINTY_MG_PER_L)
        HardnessQuantity hardnessUncertainty,
        @Property(value = "Iron, in the form given by ironForm.", min = 0, max = WaterAnalysis.MAX_IRON_MG_PER_L, unit = "mg/L",
                fallback = "not tested: none is included, and a caution says so") ConcentrationQuantity iron,
        @Property(value = "Form of the iron. A softener removes only dissolved iron. The other forms add no "
                + "hardness and must be treated first.", defaultCode = "dissolved",
                example = "\"dissolved\"") IronForm ironForm,
        @Property(value = "Manganese.", min = 0, max = WaterAnalysis.MAX_MANGANESE_MG_PER_L, unit = "mg/L",
                fallback = "not tested: none is included") ConcentrationQuantity manganese,
        @Property(value = "Sodium of the raw water.", min = 0, max = WaterAnalysis.MAX_SODIUM_MG_PER_L, unit = "mg/L",
                fallback = "not tested: totals include only the added sodium") ConcentrationQuantity sodium,
        @Property(value = "Potassium of the raw water.", min = 0, max = WaterAnalysis.MAX_POTASSIUM_MG_PER_L, unit = "mg/L",
                fallback = "none: household tests do not measure it") ConcentrationQuantity potassium,
        @Property(value = "The pH.", min = 0, max = WaterAnalysis.MAX_PH, example = "7.4", fallback = "not tested")
        BigDecimal ph,
        @Property(value = "Total dissolved solids.", min = 0, max = WaterAnalysis.MAX_DISSOLVED_SOLIDS_MG_PER_L,
                unit = "mg/L", fallback = "not tested") ConcentrationQuantity dissolvedSolids,
        @Property(value = "Free chlorine.", min = 0, max = WaterAnalysis.MAX_CHLORINE_MG_PER_L, unit = "mg/L",
                fallback = "not tested") ConcentrationQuantity freeChlorine,
        @Property(value = "Hydrogen sulfide.", min = 0, max = WaterAnalysis.MAX_HYDROGEN_SULFIDE_MG_PER_L, unit = "mg/L",
                fallback = "not tested") ConcentrationQuantity hydrogenSulfide,
        @Property(value = "Turbidity.", min = 0, max = WaterAnalysis.MAX_TURBIDITY_NTU, unit = "NTU", example = "0.5",
                fallback = "not tested") BigDecimal turbidityNtu,
        @Property(value = "Lowest water temperature in use. Cold water is more viscous and needs a gentler backwash.",
                min = WaterAnalysis.MIN_TEMPERATURE_CELSIUS, max = WaterAnalysis.MAX_TEMPERATURE_CELSIUS, unit = "C",
                byDefault = WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS) TemperatureQuantity temperature,
        @Property(value = "Source of the water.", defaultCode = "publicSupply", example = "\"privateWell\"")
        Supply supply,
        @Property(value = "Whether a bacteria test of the water was made and passed.", defaultCode = "false",
                example = "false") Boolean bacteriaTested,
        @Property(value = "Factors that convert iron and manganese to hardness.", fallback = "the standard set")
        CompensationRequest compensation) implements Checked, HardnessSource {

    @Override
    public void check(Violations at) {
        if (dissolvedSolids != null && !at.here()) {
            double least = WaterCautions.leastSolidsMgPerL(hardnessMgPerL(), base(sodium).orElse(0));
            if (dissolvedSolids.inBase() < least) {
                at.add("dissolvedSolids", Code.INCONSISTENT, Message.of("problem.water.mustLeastMgL", Text.digits(Math.ceil(least))));
            }
        }
    }

    /** Asks for the unit of a hardness that is softened although it is soft as given. */
    public void questionUnit(Explanation explanation) {
        if (hardness != null && hardness.unit() == HardnessUnit.MG_PER_L && WaterCautions.isMaybeGrains(hardnessMgPerL())) {
            explanation.caution(Caution.HARDNESS_MAYBE_GRAINS);
        }
    }

    /** The analysis in SI, with every default recorded in {@code explanation}. */
    public WaterAnalysis toDomain(Explanation explanation) {
        AnswerUnits units = AnswerUnits.of(explanation);
        if (hardness != null && (hardness.unit() != HardnessUnit.MG_PER_L || explanation.isMetric())) {
            explanation.statingHardnessIn(hardness.unit());
        }
        noteUntested("/water/iron", iron, explanation);
        questionHighHardness(explanation);
        noteUntested("/water/manganese", manganese, explanation);
        if (bacteriaTested == null) {
            explanation.assume(Resolved.ofCode("/water/bacteriaTested", "false").byDefault("OWN-ASSUMPTION"));
        }
        return new WaterAnalysis(hardnessMgPerL(),
                explanation.resolve(hardnessUncertainty, WaterAnalysis.ASSUMED_UNCERTAINTY_MG_PER_L,
                        Resolved.of("/water/hardnessUncertainty", units.hardness(WaterAnalysis.ASSUMED_UNCERTAINTY_MG_PER_L))
                                .byDefault("OWN-ASSUMPTION")),
                base(iron), base(manganese), base(sodium), plain(ph), base(dissolvedSolids), base(freeChlorine),
                base(hydrogenSulfide), plain(turbidityNtu),
                explanation.resolve(temperature, WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS, Resolved.of("/water/temperature",
                        units.temperature(WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS)).byDefault("OWN-ASSUMPTION")),
                explanation.resolve("/water/ironForm", ironForm, IronForm.DISSOLVED, "OWN-ASSUMPTION"),
                explanation.resolve("/water/supply", supply, Supply.PUBLIC_SUPPLY, "OWN-ASSUMPTION"),
                Boolean.TRUE.equals(bacteriaTested));
    }

    /** Share of the hardness that is calcium, by equivalents, where calcium and magnesium are given. */
    public OptionalDouble calciumShare() {
        double hardness = hardnessMgPerL();
        return calcium == null || hardness == 0 ? OptionalDouble.empty()
                : OptionalDouble.of(Hardness.fromIonsMgPerL(calcium.inBase(), 0) / hardness);
    }

    /** The factors to count iron and manganese by. */
    public CompensationFactors factors(Explanation explanation) {
        return (compensation == null ? CompensationRequest.DEFAULT : compensation).toDomain(explanation);
    }

    private static void noteUntested(String pointer, Quantity<?> given, Explanation explanation) {
        if (given == null) {
            explanation.assume(Resolved.of(pointer, AnswerUnits.of(explanation).concentration(0)).byDefault("OWN-ASSUMPTION")
                    .noting(Message.of("assumed.water.testedTakenNone")));
        }
    }

    private static OptionalDouble base(Quantity<?> given) {
        return given == null ? OptionalDouble.empty() : OptionalDouble.of(given.inBase());
    }

    private static OptionalDouble plain(BigDecimal given) {
        return given == null ? OptionalDouble.empty() : OptionalDouble.of(given.doubleValue());
    }
}
