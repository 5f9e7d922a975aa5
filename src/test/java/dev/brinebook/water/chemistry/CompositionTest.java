// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.chemistry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import java.io.IOException;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class CompositionTest {

    private static final String BALANCES = "/water/chemistry/cross-balances.csv";

    @ParameterizedTest
    @CsvFileSource(resources = BALANCES, useHeadersInDisplayName = true)
    void agreesWithAnotherCalculationOfEachPublishedAnalysis(String id, String cations, String anions, String percent, String hardness,
            String residue, String conductivityRatio) throws IOException {
        PublishedAnalysis analysis = PublishedAnalysis.all(PublishedAnalysis.GOOD, PublishedAnalysis.DOUBTFUL).get(id);
        Composition water = analysis.composition();
        ChargeBalance balance = ChargeBalance.of(water);
        Printed.assertAgrees(cations, null, balance.cationsMeqPerL());
        Printed.assertAgrees(anions, null, balance.anionsMeqPerL());
        Printed.assertAgrees(percent, null, balance.percent());
        Printed.assertAgrees(hardness, null, water.hardnessMgPerL());
        Printed.assertAgrees(residue, null, water.residueMgPerL(analysis.number("silica").orElse(0)));
        if (conductivityRatio != null) {
            Printed.assertAgrees(conductivityRatio, null, water.conductivity() / analysis.number("conductivity").getAsDouble());
        }
    }

    /** What laboratories print of their own sums: cations, anions, and the difference in %. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            18, 9.66, 9.75, -0.5, 0.02, its weights are rounded
            19, 9.97, 9.09, 4.6, 0.02, its weights are rounded
            24, 5.2, 5.1, , 0.06, whole mg/L
            25, 4.8, 4.7, , 0.06, what is below its limit counts 0 here
            26, 8.0, 8.2, , 0.05, whole mg/L
            27, 4.5, 4.2, , 0.05, printed with the anions first
            """)
    void agreesWithTheSumsOfTheLaboratory(String id, String cations, String anions, String percent, String tolerance, String why)
            throws IOException {
        ChargeBalance balance = ChargeBalance.of(PublishedAnalysis.all(PublishedAnalysis.GOOD).get(id).composition());
        Printed.assertAgrees(cations, tolerance, balance.cationsMeqPerL());
        Printed.assertAgrees(anions, tolerance, balance.anionsMeqPerL());
        if (percent != null) {
            Printed.assertAgrees(percent, null, balance.percent());
        }
    }

    /** Stated hardness within 1.2 %, the coarsest rounding of them, and residue within what 1030 E allows. */
    @Test
    void agreesWithStatedHardnessAndSolids() throws IOException {
        int hardnesses = 0;
        int solids = 0;
        for (PublishedAnalysis analysis : PublishedAnalysis.all(PublishedAnalysis.GOOD).values()) {
            Composition water = analysis.composition();
            if (analysis.number("statedHardness").orElse(0) > 0) {
                double stated = analysis.number("statedHardness").getAsDouble();
                assertEquals(stated, water.hardnessMgPerL(), Math.max(0.018 * stated, 0.5), analysis.id());
                hardnesses++;
            }
            if (analysis.number("statedSolids").isPresent()) {
                double ratio = analysis.number("statedSolids").getAsDouble() / water.residueMgPerL(analysis.number("silica").orElse(0));
                assertTrue(ratio >= 0.98 && ratio <= 1.2, analysis.id() + " " + ratio);
                solids++;
            }
        }
        assertEquals(23, hardnesses);
        assertEquals(9, solids);
        assertEquals(28, Rows.in(PublishedAnalysis.GOOD));
        assertEquals(11, Rows.in(PublishedAnalysis.DOUBTFUL));
        assertEquals(39, Rows.in(BALANCES));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            CALCIUM, 20.039
            MAGNESIUM, 12.1525
            SODIUM, 22.990
            POTASSIUM, 39.098
            AMMONIUM, 18.039
            IRON, 27.9225
            MANGANESE, 27.469
            STRONTIUM, 43.81
            BARIUM, 68.6635
            HYDROGEN, 1.008
            BICARBONATE, 61.016
            CARBONATE, 30.004
            HYDROXIDE, 17.007
            CHLORIDE, 35.45
            SULFATE, 48.028
            NITRATE, 62.004
            NITRITE, 46.005
            FLUORIDE, 18.998
            PHOSPHATE, 47.485
            BROMIDE, 79.904
            """)
    void weighsIonsByTheirCharge(Ion ion, String mgPerMeq) {
        Printed.assertAgrees(mgPerMeq, null, ion.mgPerMeq());
    }

    @Test
    void countsHydrogenOfAcidWaterOnly() {
        Composition pure = new Composition(Map.of());
        assertEquals(0.1, pure.withHydrogenOf(4).cationsMeqPerL(), 1e-12, "10^-4 mol/L");
        assertEquals(0, pure.withHydrogenOf(5).cationsMeqPerL());
        assertEquals(0, ChargeBalance.of(pure).percent());
    }

    @Test
    void saysWhatIsMissing() {
        Composition water = new Composition(Map.of(Ion.CALCIUM, 80.0, Ion.MAGNESIUM, 10.0, Ion.CARBONATE, 5.0));
        assertEquals(Set.of(Ion.SODIUM, Ion.CHLORIDE, Ion.SULFATE), water.missing());
        assertThrows(IllegalArgumentException.class, () -> water.with(Ion.SODIUM, -1));
        assertThrows(IllegalArgumentException.class, () -> water.with(Ion.SODIUM, Double.NaN));
    }
}
