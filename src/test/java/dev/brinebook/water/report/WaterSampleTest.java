// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.quantity.MolarMass;
import dev.brinebook.source.Sources;
import dev.brinebook.water.chemistry.PublishedAnalysis;
import dev.brinebook.water.report.MetalForm.AfterStanding;
import dev.brinebook.water.report.MetalForm.AtTap;
import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WaterSampleTest {

    private static final Set<Parameter> COLUMNS = Set.of(Parameter.PH, Parameter.CONDUCTIVITY, Parameter.CALCIUM, Parameter.MAGNESIUM,
            Parameter.SODIUM, Parameter.POTASSIUM, Parameter.CARBONATE, Parameter.CHLORIDE, Parameter.SULFATE, Parameter.FLUORIDE,
            Parameter.SILICA, Parameter.IRON, Parameter.MANGANESE);

    /** A published analysis, each value known to 3 %. */
    static Sample published(String id) throws IOException {
        PublishedAnalysis row = PublishedAnalysis.all(PublishedAnalysis.GOOD, PublishedAnalysis.DOUBTFUL).get(id);
        Map<Parameter, Estimate> values = new EnumMap<>(Parameter.class);
        COLUMNS.forEach(parameter -> put(values, parameter, row.number(parameter.name().toLowerCase(java.util.Locale.ROOT))));
        put(values, Parameter.TEMPERATURE, row.number("celsius"));
        put(values, row.cells().get("alkalinityForm").equals("asHCO3") ? Parameter.BICARBONATE : Parameter.ALKALINITY,
                row.number("alkalinity"));
        put(values, Parameter.HARDNESS, row.number("statedHardness"));
        put(values, Parameter.DISSOLVED_SOLIDS, row.number("statedSolids"));
        OptionalDouble nitrate = row.number("nitrateAsN");
        nitrate.ifPresent(n -> put(values, Parameter.NITRATE, OptionalDouble.of(n * MolarMass.grams("NO3") / MolarMass.grams("N"))));
        return new Sample(values);
    }

    private static void put(Map<Parameter, Estimate> values, Parameter parameter, OptionalDouble value) {
        value.ifPresent(given -> values.put(parameter, new Estimate(given, 0.03 * Math.abs(given))));
    }

    static Sample of(Object... pairs) {
        Map<Parameter, Estimate> values = new EnumMap<>(Parameter.class);
        for (int i = 0; i < pairs.length; i += 2) {
            values.put((Parameter) pairs[i], new Estimate(((Number) pairs[i + 1]).doubleValue(), 0.01));
        }
        return new Sample(values);
    }

    /** One house, raw and softened, 2012; two soft-looking natural waters; sodium of the raw tap is 3 mg/L. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            24, NOT_SOFTENED, 3,
            25, LIKELY_SOFTENED, 3, 231
            16, NOT_SOFTENED, 3,
            27, NOT_SOFTENED, 3,
            """)
    void recognisesASoftenedTap(String id, SoftenedSample.Verdict verdict, double natural, String raw) throws IOException {
        SoftenedSample found = SoftenedSample.of(published(id), new Estimate(natural, 0));
        assertEquals(verdict, found.verdict());
        assertEquals(raw != null, found.raw().isPresent());
        if (raw != null) {
            Printed.assertAgrees(raw, null, found.raw().get().value());
            Printed.assertAgrees("23", null, 2 * found.raw().get().standardUncertainty());
            assertEquals(252, found.raw().get().value(), 2 * found.raw().get().standardUncertainty(), "the raw tap of the same house");
        }
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            5, 211, 109, 2, LIKELY_SOFTENED
            30, 211, 300, 2, BLENDED_OR_LEAKING
            5, 90, 109, 2, NOT_SOFTENED
            5, 211, 2, 180, LIKELY_SOFTENED
            70, 211, 300, 2, NOT_SOFTENED
            """)
    void goesByEverySign(double hardness, double alkalinity, double sodium, double potassium, SoftenedSample.Verdict verdict) {
        assertEquals(verdict, SoftenedSample.of(of(Parameter.HARDNESS, hardness, Parameter.ALKALINITY, alkalinity, Parameter.SODIUM, sodium,
                Parameter.POTASSIUM, potassium), SoftenedSample.ASSUMED_NATURAL_SODIUM).verdict());
    }

    @Test
    void saysNothingWithoutTheSigns() {
        assertEquals(SoftenedSample.Verdict.CANNOT_SAY, SoftenedSample.of(of(Parameter.HARDNESS, 5), SoftenedSample.ASSUMED_NATURAL_SODIUM)
                .verdict());
    }

    /** Good published analyses keep to every ratio, but for those named here with their reason. */
    @Test
    void goodAnalysesKeepToTheRatios() throws IOException {
        Map<String, Set<RatioCheck>> known = Map.of("14", Set.of(RatioCheck.CONDUCTIVITY), "19", Set.of(RatioCheck.CONDUCTIVITY,
                RatioCheck.CATIONS_TO_CONDUCTIVITY, RatioCheck.ANIONS_TO_CONDUCTIVITY), "25", Set.of(RatioCheck.CONDUCTIVITY));
        int checked = 0;
        for (String id : PublishedAnalysis.all(PublishedAnalysis.GOOD).keySet()) {
            Sample sample = published(id);
            for (RatioCheck check : RatioCheck.values()) {
                checked += check.of(sample).isPresent() ? 1 : 0;
                boolean allowed = known.getOrDefault(id, Set.of()).contains(check);
                assertTrue(check.holds(sample) || allowed, id + " " + check + " " + check.of(sample));
            }
        }
        assertEquals(111, checked);
    }

    /** B10 states the hardness of its calcium alone; B9 never weighed its solids. */
    @Test
    void seesWhatDoesNotAgree() throws IOException {
        assertFalse(RatioCheck.HARDNESS.holds(published("B10")));
        assertEquals(1.17, RatioCheck.HARDNESS.of(published("B10")).getAsDouble(), 0.005);
        for (String id : List.of("B9a", "B9b", "B9c", "B10")) {
            assertTrue(RatioCheck.areSolidsOfMeter(published(id)), id);
            assertTrue(RatioCheck.SOLIDS_TO_SUM.of(published(id)).isEmpty(), id);
        }
        assertFalse(RatioCheck.areSolidsOfMeter(published("18")));
        assertEquals(434 / 394.0, RatioCheck.SOLIDS_TO_SUM.of(published("28")).getAsDouble(), 0.002, "weighed against summed");
    }

    /** Each pair of results that cannot both hold, and its neighbour that can. */
    @Test
    void namesPairsThatCannotBothHold() {
        Sample none = of(Parameter.PH, 7.5);
        assertEquals(List.of(), Contradiction.of(none));
        assertPair(Contradiction.CHLORINE_BESIDE_IRON, of(Parameter.FREE_CHLORINE, 0.5, Parameter.IRON_DISSOLVED, 0.2),
                of(Parameter.FREE_CHLORINE, 0.5, Parameter.IRON_DISSOLVED, 0.05));
        assertPair(Contradiction.DISSOLVED_IRON_BESIDE_OXYGEN, of(Parameter.IRON_DISSOLVED, 1, Parameter.OXYGEN, 6, Parameter.PH, 8.0),
                of(Parameter.IRON_DISSOLVED, 1, Parameter.OXYGEN, 6, Parameter.PH, 7.0));
        assertPair(Contradiction.NITRATE_BESIDE_IRON, of(Parameter.NITRATE, 30, Parameter.IRON_DISSOLVED, 2),
                of(Parameter.NITRATE, 20, Parameter.IRON_DISSOLVED, 2));
        assertPair(Contradiction.CARBONATE_AT_LOW_PH, of(Parameter.CARBONATE, 5, Parameter.PH, 7.8),
                of(Parameter.CARBONATE, 5, Parameter.PH, 8.4));
        assertPair(Contradiction.HYDROXIDE_BESIDE_BICARBONATE, of(Parameter.HYDROXIDE, 5, Parameter.BICARBONATE, 50),
                of(Parameter.HYDROXIDE, 0, Parameter.BICARBONATE, 50));
        assertPair(Contradiction.ALKALINITY_IN_ACID, of(Parameter.ALKALINITY, 20, Parameter.PH, 4.2),
                of(Parameter.ALKALINITY, 4, Parameter.PH, 4.2));
        assertPair(Contradiction.TO_PH_8_ABOVE_TOTAL, of(Parameter.ALKALINITY_TO_PH_8, 120, Parameter.ALKALINITY, 100),
                of(Parameter.ALKALINITY_TO_PH_8, 90, Parameter.ALKALINITY, 100));
        assertPair(Contradiction.CARBON_DIOXIDE_NOT_OF_PH, of(Parameter.CARBON_DIOXIDE, 30, Parameter.PH, 7.9, Parameter.ALKALINITY, 228,
                Parameter.CALCIUM, 84), of(Parameter.CARBON_DIOXIDE, 7, Parameter.PH, 7.9, Parameter.ALKALINITY, 228,
                        Parameter.CALCIUM, 84));
        assertPair(Contradiction.HARDNESS_ABOVE_SOLIDS, of(Parameter.HARDNESS, 310, Parameter.DISSOLVED_SOLIDS, 250),
                of(Parameter.HARDNESS, 290, Parameter.DISSOLVED_SOLIDS, 250));
        assertPair(Contradiction.CALCIUM_ABOVE_HARDNESS, of(Parameter.CALCIUM, 210, Parameter.HARDNESS, 252),
                of(Parameter.CALCIUM, 84, Parameter.HARDNESS, 252));
        assertPair(Contradiction.DISSOLVED_IRON_ABOVE_ALL, of(Parameter.IRON_DISSOLVED, 2, Parameter.IRON, 1.5),
                of(Parameter.IRON_DISSOLVED, 1.6, Parameter.IRON, 1.5));
        assertPair(Contradiction.DISSOLVED_MANGANESE_ABOVE_ALL, of(Parameter.MANGANESE_DISSOLVED, 2, Parameter.MANGANESE, 1),
                of(Parameter.MANGANESE_DISSOLVED, 1, Parameter.MANGANESE, 1));
        assertPair(Contradiction.PH_ABOVE_SATURATION, of(Parameter.PH, 8.6, Parameter.ALKALINITY, 228, Parameter.CALCIUM, 84),
                of(Parameter.PH, 7.6, Parameter.ALKALINITY, 228, Parameter.CALCIUM, 84));
        assertPair(Contradiction.CHLORIDE_WITHOUT_SODIUM, of(Parameter.SODIUM, 0, Parameter.CHLORIDE, 416),
                of(Parameter.SODIUM, 162, Parameter.CHLORIDE, 416));
    }

    private static void assertPair(Contradiction contradiction, Sample cannot, Sample can) {
        assertEquals(List.of(contradiction), Contradiction.of(cannot));
        assertEquals(List.of(), Contradiction.of(can), contradiction + "");
        assertEquals(2, contradiction.pair().size());
    }

    @Test
    void hardnessIsAPartOfTheCations() throws IOException {
        assertEquals(List.of(Contradiction.CHLORIDE_WITHOUT_SODIUM), Contradiction.of(published("B5")));
        Sample wrong = published("24").with(Parameter.HARDNESS, new Estimate(300, 1));
        assertTrue(Contradiction.of(wrong).contains(Contradiction.HARDNESS_ABOVE_CATIONS));
        assertEquals(List.of(), Contradiction.of(published("24")));
    }

    /** Minutes in water saturated with air, by hand from the constant: ln 2/(8e13 · 10^(2 (pH − pKw)) · 0.21). */
    @ParameterizedTest
    @CsvSource(textBlock = """
            6.0, 25, 412
            6.5, 25, 41
            7.0, 25, 4.1
            7.5, 25, 0.41
            8.0, 25, 0.04
            6.0, 10, 4820
            7.0, 10, 48
            8.0, 10, 0.5
            """)
    void ironRustsFasterTheHigherThePh(double ph, double celsius, String minutes) {
        Printed.assertAgrees(minutes, ph == 6 ? "1%" : null, IronOxidation.halfLifeMinutes(ph, celsius));
    }

    /** The scheme of extension sheets: at the tap, after standing, slime in the tank. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            CLEAR, RED_GRAINS, false, DISSOLVED
            CLEAR, BLACK_SPECKS, false, DISSOLVED
            RED, SETTLES, false, PARTICLES
            RED, DOES_NOT_SETTLE, false, COLLOIDAL
            TINTED, DOES_NOT_SETTLE, false, COLLOIDAL
            TINTED, SETTLES, false, PARTICLES
            TEA_COLOURED, NO_CHANGE, false, ORGANIC
            CLEAR, RED_GRAINS, true, BACTERIAL
            UNKNOWN, FLUFF, false, BACTERIAL
            UNKNOWN, RED_GRAINS, false, DISSOLVED
            UNKNOWN, SETTLES, false, PARTICLES
            UNKNOWN, UNKNOWN, false, UNKNOWN
            """)
    void tellsTheFormOfIron(AtTap atTap, AfterStanding standing, boolean slime, MetalForm form) {
        assertEquals(form, MetalForm.seen(atTap, standing, slime));
    }

    @Test
    void dividesIronByItsFilteredSample() {
        OptionalDouble all = OptionalDouble.of(2);
        OptionalDouble filtered = OptionalDouble.of(1.5);
        OptionalDouble none = OptionalDouble.empty();
        assertEquals(filtered, MetalForm.PARTICLES.dissolvedMgPerL(all, filtered));
        assertEquals(all, MetalForm.DISSOLVED.dissolvedMgPerL(all, none));
        assertEquals(OptionalDouble.of(0), MetalForm.PARTICLES.dissolvedMgPerL(all, none));
        assertEquals(none, MetalForm.UNKNOWN.dissolvedMgPerL(all, none));
        assertEquals(none, MetalForm.PARTICLES.dissolvedMgPerL(none, none));
        assertEquals(MetalForm.DISSOLVED, MetalForm.UNKNOWN.with(all, filtered));
        assertEquals(MetalForm.PARTICLES, MetalForm.UNKNOWN.with(all, OptionalDouble.of(0.2)));
        assertEquals(MetalForm.UNKNOWN, MetalForm.UNKNOWN.with(all, none));
    }

    /** Raw and softened tap of one house at 12 °C (worked with CarbonateSystemTest), and what a calcite bed does to an acid water. */
    @Test
    void followsSaturationThroughTreatment() throws IOException {
        Saturation hard = Saturation.of(published("24").with(Parameter.TEMPERATURE, new Estimate(12, 0))).orElseThrow();
        assertEquals(0.65, hard.raw().calciteIndex().getAsDouble(), 0.03);
        assertEquals(2.2, hard.raw().calciteIndex().getAsDouble() - hard.softened().calciteIndex().getAsDouble(), 0.05, "log10(84/0.5)");
        assertEquals(0, hard.neutralisingAddsMgPerL());
        Saturation acid = Saturation.of(of(Parameter.PH, 6.2, Parameter.ALKALINITY, 40, Parameter.CALCIUM, 12)).orElseThrow();
        assertTrue(acid.raw().calciteIndex().getAsDouble() < -2);
        assertEquals(0, acid.neutralised().orElseThrow().calciteIndex().getAsDouble(), 1e-6);
        assertEquals(7.5, acid.neutralised().get().ph(), 0.05, "equilibrium pH of a water with 3 meq/L and 1.4 mmol/L of calcium at 12 °C");
        assertEquals(acid.neutralisingAddsMgPerL() * 0.43971, acid.raw().aggressiveCarbonDioxideMgPerL().getAsDouble(), 0.01);
        assertTrue(Saturation.of(of(Parameter.PH, 7)).isEmpty());
    }

    /** Limits that look alike on paper: 10 mg/L of nitrate as N in the US, 50 as nitrate elsewhere. */
    @Test
    void comparesWithAuthorities() {
        assertEquals(66, Rows.in("/water/report-guidelines.csv"));
        assertEquals(66, Guideline.all().size());
        Guideline.all().forEach(guideline -> Sources.get(guideline.sourceKey()));
        Guideline us = Guideline.of(Parameter.NITRATE).get(0);
        assertEquals(44.27, us.high().getAsDouble(), 0.005, "44.3 as nitrate");
        assertFalse(us.holds(45));
        assertTrue(Guideline.of(Parameter.NITRATE).get(1).holds(45));
        assertTrue(Guideline.of(Parameter.PH).get(0).holds(6.5));
        assertFalse(Guideline.of(Parameter.PH).get(0).holds(6.4));
        assertEquals(2790, Guideline.of(Parameter.CONDUCTIVITY).get(0).high().getAsDouble(), 1e-9, "2500 at 20 degrees");
        assertEquals(List.of(Parameter.NITRATE, Parameter.ARSENIC), Guideline.missed(of(Parameter.NITRATE, 45, Parameter.ARSENIC, 0.02,
                Parameter.LEAD, 0.001, Parameter.IRON, 5), Guideline.Kind.HEALTH, Guideline.Authority.UNITED_STATES).stream()
                .map(Guideline::parameter).toList());
        assertEquals(List.of(), Guideline.of(Parameter.HARDNESS));
    }

    @Test
    void comparesWithWhatResinTolerates() {
        assertEquals(8, Rows.in("/water/report-resin-limits.csv"));
        ResinLimit.all().forEach(limit -> Sources.get(limit.sourceKey()));
        assertEquals(2, ResinLimit.exceeded(of(Parameter.FREE_CHLORINE, 0.8)).size());
        assertEquals(List.of(Parameter.IRON_DISSOLVED, Parameter.TURBIDITY), ResinLimit.exceeded(of(Parameter.IRON_DISSOLVED, 6,
                Parameter.TURBIDITY, 8)).stream().map(ResinLimit::parameter).toList());
        assertEquals(List.of(), ResinLimit.exceeded(of(Parameter.IRON_DISSOLVED, 5)));
    }
}
