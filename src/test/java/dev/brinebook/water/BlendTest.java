// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.caution.Caution;
import dev.brinebook.water.WaterAnalysis.IronForm;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class BlendTest {

    private static final String WORKED = "/water/worked-blending.csv";

    @ParameterizedTest
    @CsvFileSource(resources = WORKED, useHeadersInDisplayName = true)
    void agreesWithTheTextbooks(double raw, double residual, double litresPerDay, double resinCubicMetres,
            double capacityKilogramsPerCubicMetre, String quantity, String expected, String tolerance) {
        BlendedWater water = blended(water(raw, 0, IronForm.DISSOLVED), residual, 0);
        double loadKilograms = litresPerDay * water.loadMgPerL() / 1e6;
        Printed.assertAgrees(expected, tolerance, switch (quantity) {
            case "bypassPercent" -> 100 * water.blend().bypassShare();
            case "bypassLitresPerDay" -> litresPerDay * water.blend().bypassShare();
            case "loadKilogramsPerDay" -> loadKilograms;
            default -> resinCubicMetres * capacityKilogramsPerCubicMetre / loadKilograms;
        });
    }

    @Test
    void readsEveryRow() {
        assertEquals(8, Rows.in(WORKED));
    }

    @RepeatedTest(100)
    void mixingBackGivesTheResidual(RepetitionInfo repetition) {
        int seed = repetition.getCurrentRepetition();
        Random random = new Random(seed);
        double raw = 1 + 999 * random.nextDouble();
        double leakage = raw * random.nextDouble() * 0.3;
        double residual = leakage + (raw - leakage) * random.nextDouble() * 0.99;
        Blend blend = new Blend(raw, residual, leakage);
        assertEquals(residual, blend.mixed(raw, leakage), 1e-9 * raw, "seed " + seed);
        assertEquals(1, blend.bypassShare() + blend.resinShare(), 1e-12, "seed " + seed);
        double harder = residual + (raw - residual) / 2;
        assertTrue(new Blend(raw, harder, leakage).bypassShare() > blend.bypassShare(), "seed " + seed);
        assertEquals(0, new Blend(raw, leakage, leakage).bypassShare(), "seed " + seed);
        assertTrue(new Blend(raw, Math.nextDown(raw), leakage).resinShare() > 0, "seed " + seed);
        BlendedWater water = blended(water(raw, 0, IronForm.DISSOLVED), residual, leakage);
        assertEquals(raw - residual, water.loadMgPerL(), 1e-9 * raw, "what is not left is taken up, seed " + seed);
        assertEquals(blend.resinShare(), water.softened().addedSodiumMgPerL()
                / water.fullySoftened().addedSodiumMgPerL(), 1e-9, "seed " + seed);
    }

    /** Iron loads the resin and adds sodium at its equivalents of 1.7922, and b of it is left. */
    @Test
    void ironLoadsTheResinAndStaysInTheBypass() {
        BlendedWater water = blended(water(200, 2, IronForm.DISSOLVED), 50, 0);
        assertEquals(0.75 * (200 + 2 * 1.7922), water.loadMgPerL(), 0.001);
        assertEquals(0.75 * 0.4594 * (200 + 2 * 1.7922), water.softened().addedSodiumMgPerL(), 0.02);
        assertEquals(0.25 * 2, water.ironMgPerL().getAsDouble(), 1e-12);
        assertEquals(OptionalDouble.empty(), water.manganeseMgPerL());
        assertTrue(water.cautions().contains(Caution.BLEND_STAINS), "0.5 mg/L is above 0.3: 40 CFR 143.3");
        assertTrue(water.cautions().contains(Caution.BLEND_PARTLY_HARD));
        BlendedWater little = blended(water(200, 1, IronForm.DISSOLVED), 50, 0);
        assertFalse(little.cautions().contains(Caution.BLEND_STAINS), "0.25 mg/L is not");
        assertFalse(blended(water(200, 0.6, IronForm.DISSOLVED), 100, 0).cautions().contains(Caution.BLEND_STAINS),
                "0.3 mg/L is not above it");
        assertFalse(blended(water(200, 0, IronForm.DISSOLVED), 0, 0).cautions().contains(Caution.BLEND_PARTLY_HARD));
    }

    @Test
    void ironThatIsNotDissolvedStaysInAllOfIt() {
        BlendedWater water = blended(water(200, 1, IronForm.VISIBLE), 50, 0);
        assertEquals(1, water.ironMgPerL().getAsDouble(), 1e-12);
        assertTrue(water.cautions().contains(Caution.BLEND_STAINS));
    }

    @Test
    void refusesAResidualThatNoBypassLeaves() {
        assertThrows(IllegalArgumentException.class, () -> new Blend(200, 200, 0));
        assertThrows(IllegalArgumentException.class, () -> new Blend(200, 9, 10));
        assertThrows(IllegalArgumentException.class, () -> new Blend(200, Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> new Blend(200, 50, -1));
        assertThrows(IllegalArgumentException.class, () -> new Blend(10_001, 50, 0));
    }

    private static BlendedWater blended(WaterAnalysis water, double residual, double leakage) {
        return new BlendedWater(water, water.compensated(CompensationFactors.STANDARD),
                new Blend(water.hardnessMgPerL(), residual, leakage), false);
    }

    private static WaterAnalysis water(double hardness, double iron, IronForm form) {
        return WaterAnalysis.ofHardness(hardness).ironMgPerL(iron).sodiumMgPerL(5).ironForm(form).build();
    }
}
