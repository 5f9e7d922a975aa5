// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.caution.Caution;
import dev.brinebook.water.WaterAnalysis.IronForm;
import dev.brinebook.water.WaterAnalysis.Supply;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class WaterCautionsTest {

    static WaterAnalysis water(String field, double value) {
        return WaterAnalysis.ofHardness(200).ironMgPerL(of(field, "iron", value, 0)).manganeseMgPerL(of(field, "manganese", value,
                0)).sodiumMgPerL(of(field, "sodium", value, 5)).ph(of(field, "ph", value, 7)).dissolvedSolidsMgPerL(of(field, "solids",
                        value, 300)).freeChlorineMgPerL(of(field, "chlorine", value, 0)).hydrogenSulfideMgPerL(of(field, "sulfide", value,
                                0)).turbidityNtu(of(field, "turbidity", value, 0)).temperatureCelsius(field.equals("temperature") ? value
                                        : 15).build();
    }

    private static OptionalDouble of(String field, String name, double value, double otherwise) {
        return OptionalDouble.of(field.equals(name) ? value : otherwise);
    }

    @ParameterizedTest(name = "{0} {1}: {2} ({3})")
    @CsvSource({
        "iron, 0.3, '', 40 CFR 143.3 is exceeded above 0.3",
        "iron, 0.31, IRON_STAINS, 40 CFR 143.3",
        "iron, 1, IRON_BEFORE_RESIN IRON_STAINS, Illinois 35 IAC 604.805(a)",
        "iron, 2.1, IRON_BEFORE_RESIN LOW_DOSE_WILL_NOT_HOLD IRON_STAINS, trade association booklet",
        "iron, 10.1, IRON_TREAT_FIRST LOW_DOSE_WILL_NOT_HOLD IRON_STAINS, NDSU WQ1031",
        "iron, 10, IRON_BEFORE_RESIN LOW_DOSE_WILL_NOT_HOLD IRON_STAINS, NDSU WQ1031 speaks of more than 10",
        "manganese, 0.05, '', 40 CFR 143.3 is exceeded above 0.05",
        "manganese, 0.06, MANGANESE_STAINS, 40 CFR 143.3",
        "manganese, 0.31, MANGANESE_INFANTS MANGANESE_STAINS, New Hampshire DES DWGB-3-8",
        "ph, 6.4, PH_OUT_OF_RANGE, 40 CFR 143.3",
        "ph, 6.5, '', 40 CFR 143.3",
        "ph, 8.6, PH_OUT_OF_RANGE, 40 CFR 143.3",
        "ph, 8.5, '', 40 CFR 143.3",
        "ph, 3, PH_IMPLAUSIBLE PH_OUT_OF_RANGE, 6.0 to 8.5 is usual: Hem 1985, from memory",
        "ph, 12.5, PH_IMPLAUSIBLE PH_OUT_OF_RANGE, 6.0 to 8.5 is usual: Hem 1985, from memory",
        "solids, 200, '', all of it hardness: limestone water",
        "solids, 199, HARDNESS_ABOVE_SOLIDS, parts are not more than the whole: Standard Methods 1030 E, from memory",
        "sodium, 150, '', half of the solids",
        "sodium, 151, SODIUM_ABOVE_SOLIDS, sodium carbonate weighs 2.3 times its sodium: CIAAW",
        "solids, 501, DISSOLVED_SOLIDS_TASTE, 40 CFR 143.3",
        "solids, 751, LOW_DOSE_WILL_NOT_HOLD DISSOLVED_SOLIDS_TASTE, trade association booklet",
        "chlorine, 1.1, CHLORINE_RESIN_LIFE, common practice",
        "sulfide, 0.1, HYDROGEN_SULFIDE, NebGuide G1491",
        "turbidity, 5.1, TURBIDITY_FILTER_FIRST, Ten States Standards 4.4",
        "temperature, 9.9, COLD_WATER, WC&P April 2023",
        "temperature, 10, '', WC&P April 2023"})
    void warnsAtTheLimitOfItsSource(String field, double value, String expected, String source) {
        List<Caution> cautions = Caution.ordered(WaterCautions.of(water(field, value)));
        assertEquals(expected, cautions.stream().map(Enum::name).collect(Collectors.joining(" ")));
    }

    @ParameterizedTest(name = "{0} mg/L of iron, {1}, beside {2} mg/L of chlorine: {3}")
    @CsvSource({"0.5, DISSOLVED, 0.6, true", "0.5, COLLOIDAL, 0.6, false", "0.5, DISSOLVED, 0.1, false", "0.1, DISSOLVED, 0.6, false"})
    void questionsDissolvedIronBesideFreeChlorine(double iron, IronForm form, double chlorine, boolean questioned) {
        OptionalDouble none = OptionalDouble.empty();
        WaterAnalysis water = WaterAnalysis.ofHardness(200).ironMgPerL(iron).freeChlorineMgPerL(chlorine).temperatureCelsius(15)
                .ironForm(form).build();
        assertEquals(questioned, WaterCautions.of(water).contains(Caution.CHLORINE_BESIDE_IRON));
    }

    /** 40.304 / 100.086, magnesium oxide over calcium carbonate: CIAAW, by hand. */
    @Test
    void knowsTheLeastThatSolidsCanWeigh() {
        assertEquals(0.4027 * 300 + 10, WaterCautions.leastSolidsMgPerL(300, 10), 0.01);
    }

    @Test
    void warnsOfASepticSystemOnlyWhereOneMayBe() {
        assertEquals(List.of(Caution.SEWER_SALT_LIMITS), WaterCautions.ofDischarge(Supply.PUBLIC_SUPPLY));
        assertEquals(Caution.OF_DISCHARGE, WaterCautions.ofDischarge(Supply.PRIVATE_WELL));
    }

    @ParameterizedTest
    @EnumSource(value = IronForm.class, names = "DISSOLVED", mode = EnumSource.Mode.EXCLUDE)
    void countsNoIronThatIsNoIonAndHasItTreatedFirst(IronForm form) {
        OptionalDouble none = OptionalDouble.empty();
        WaterAnalysis water = WaterAnalysis.ofHardness(200).ironMgPerL(3).manganeseMgPerL(1).ironForm(form)
                .supply(Supply.PRIVATE_WELL).bacteriaTested(true).build();
        CompensatedHardness hardness = water.compensated(CompensationFactors.STANDARD);
        assertEquals(0, hardness.ironLineMgPerL());
        assertEquals(200 + 1.8218, hardness.realMgPerL(), 1e-3, "manganese alone, 100.086 / 54.938: CIAAW");
        assertEquals(1, Treatment.neededBy(water).size());
        assertEquals("CP-RESIN-CARE", Treatment.neededBy(water).get(0).sourceKey());
    }

    @Test
    void countsIronAndManganeseTogether() {
        WaterAnalysis both = WaterAnalysis.ofHardness(200).ironMgPerL(0.6).manganeseMgPerL(0.5).build();
        assertEquals(1.1, both.ironAndManganeseMgPerL(), 1e-12);
        assertTrue(WaterCautions.of(both).contains(Caution.IRON_BEFORE_RESIN), "above 1 together: Illinois 35 IAC 604.805");
    }

    @Test
    void warnsOfAnUntestedWellAndOfIronThatIsNoIon() {
        WaterAnalysis well = WaterAnalysis.ofHardness(200).ironForm(IronForm.BACTERIAL).supply(Supply.PRIVATE_WELL).build();
        assertEquals(Set.of(Caution.IRON_NOT_TESTED, Caution.IRON_NOT_DISSOLVED, Caution.WELL_WITHOUT_BACTERIA_TEST),
                WaterCautions.of(well));
        assertEquals(200, well.compensated(CompensationFactors.STANDARD).totalMgPerL());
    }

    @ParameterizedTest
    @CsvSource({"iron, 100.1", "manganese, 50.1", "sodium, 10001", "ph, 14.1", "ph, NaN", "solids, 35001", "chlorine, 20.1",
        "sulfide, 50.1", "turbidity, 1001", "temperature, 0", "temperature, 35.1"})
    void refusesWhatNoDrinkingWaterHolds(String field, double value) {
        assertThrows(IllegalArgumentException.class, () -> water(field, value));
    }
}
