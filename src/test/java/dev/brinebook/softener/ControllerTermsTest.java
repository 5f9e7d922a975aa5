// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.MassUnit;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.water.WaterAnalysis;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ControllerTermsTest {

    private static final RunningCost COST = new RunningCost(0.45, 2.9);
    private static final List<SaltStep> SALT = List.of(new SaltStep.Mass(MassUnit.KILOGRAM, 0.1), new SaltStep.Mass(MassUnit.POUND, 1),
            new SaltStep.RefillMinutes(0.5), new SaltStep.GramsPerLitre(10), ControllerTerms.US.saltStep());
    private static final List<ReserveStep> RESERVE = List.of(new ReserveStep.Volume(10), new ReserveStep.Percent(5),
            new ReserveStep.MeanDays(0.5));

    private static ControllerTerms terms(HardnessUnit unit, SaltStep salt, ReserveStep reserve) {
        return ControllerTerms.of(unit, ControllerTerms.capacityUnitOf(unit), salt, VolumeUnit.LITRE, reserve);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            gpg of 17.1181 mg/L    | GPG           | 308 | 0  | 18  | 17.99, NIST SP 811
            the same at the step   | GPG           | 342.362 | 0 | 20 | 20.000, a whole number stays
            and uncertain by one   | GPG           | 308 | 17.118 | 19 | drop tests resolve 1 gpg: common practice
            degree of 17.848 mg/L  | GERMAN_DEGREE | 321.264 | 0 | 18 | 18.000, DIN 38409-6
            a little more          | GERMAN_DEGREE | 323 | 0  | 19  | 18.097
            degree of 10 mg/L      | FRENCH_DEGREE | 301 | 0  | 31  | 30.1, definition
            mmol/L of 100.086 mg/L | MMOL_PER_L    | 321 | 0  | 3.3 | 3.207, CIAAW 2021
            meq/L of 50.043 mg/L   | MEQ_PER_L     | 321 | 0  | 6.5 | 6.414, GOST 31865-2012
            mg/L in tens           | MG_PER_L      | 312 | 0  | 320 | common practice
            Clark degree           | GPG_IMPERIAL  | 308 | 0  | 22  | 21.61, NIST SP 811 and Weights and Measures Act 1985
            never nothing          | GERMAN_DEGREE | 1   | 0  | 1   | one step""")
    void hardnessIsRoundedUp(String what, HardnessUnit unit, double mgPerL, double uncertain, double expected, String source) {
        assertEquals(expected, unit.fromBase(duty(mgPerL, uncertain, 200, terms(unit, SALT.get(0), RESERVE.get(0))).settingMgPerL()),
                1e-4, what + ": " + source);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            GPG           | 720.816 | 11100 | GRAIN                      | 11123.9: 64.79891 mg, NIST SP 811; hundreds: common practice
            GERMAN_DEGREE | 720.816 | 40    | GERMAN_DEGREE_CUBIC_METRE  | 40.386: 17.848 g, DIN 38409-6
            FRENCH_DEGREE | 720.816 | 72    | FRENCH_DEGREE_CUBIC_METRE  | 72.08: 10 g, definition
            MMOL_PER_L    | 720.816 | 7.2   | MOLE                       | 7.202: 100.086 g, CIAAW 2021
            MEQ_PER_L     | 720.816 | 14.4  | EQUIVALENT                 | 14.404: half of it
            MG_PER_L      | 720.816 | 720   | GRAM                       | tens: common practice
            FRENCH_DEGREE | 3       | 1     | FRENCH_DEGREE_CUBIC_METRE  | at least one step""")
    void capacityIsRoundedDown(HardnessUnit hardness, double grams, double expected, CapacityUnit unit, String source) {
        ControllerTerms terms = terms(hardness, SALT.get(0), RESERVE.get(0));
        assertEquals(unit, terms.capacityUnit());
        assertEquals(expected, unit.fromBase(terms.capacityDownGrams(grams)), 1e-9, source);
        assertEquals(hardness, ControllerTerms.hardnessUnitOf(unit), "and back");
    }

    /** So capacity over hardness is water, as the controller counts it: in cubic metres, or with grains in gallons. */
    @ParameterizedTest
    @EnumSource(value = HardnessUnit.class, names = "GPG_IMPERIAL", mode = EnumSource.Mode.EXCLUDE)
    void capacityIsHardnessTimesWater(HardnessUnit unit) {
        double cubicMetres = unit == HardnessUnit.GPG ? Exact.US_GALLON_LITRES / 1000 : 1;
        assertEquals(unit.toBase(cubicMetres), ControllerTerms.capacityUnitOf(unit).toBase(1), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1   | 100       | 2800    | 6800    | 21 | from 2721.6 to 6803.9 g: 6 to 15 lb/ft3; every other tenth of a kg
            1   | 500       | 3000    | 6500    | 8  | half kilograms
            1   | 1000      | 3000    | 6000    | 4  | kilograms
            1   | 453.59237 | 2721.55 | 6803.89 | 10 | pounds, 6 to 15
            0.1 | 800       | 800     | 800     | 1  | none from 272 to 680 g, so the first above, below the 907 g of 20 lb/ft3""")
    void saltIsSetInWholeSteps(double cubicFeet, double stepGrams, double first, double last, int count, String source) {
        Softener softener = Softeners.cubicFeet(cubicFeet, 6, 75);
        List<Double> doses = new SaltStep.Mass(MassUnit.GRAM, stepGrams).dosesGramsPerLitre(softener, 6, 12);
        assertEquals(first, softener.saltGrams(doses.get(0)), 0.005, source);
        assertEquals(last, softener.saltGrams(doses.get(doses.size() - 1)), 0.005, source);
        assertEquals(count, doses.size(), source);
        doses.forEach(dose -> assertEquals(0, Math.IEEEremainder(softener.saltGrams(dose) / stepGrams, 1), 1e-9));
    }

    @Test
    void refillIsSetInWholeSteps() {
        Softener softener = Softeners.cubicFeet(1.5, 10, 54);
        List<Double> doses = new SaltStep.RefillMinutes(0.5).dosesGramsPerLitre(softener, 6, 12);
        assertTrue(doses.size() > 10);
        doses.forEach(dose -> assertEquals(0, Math.IEEEremainder(softener.cycleDesign(dose, 12).cycle()
                .step(CycleStep.Kind.REFILL).minutes() / 0.5, 1), 1e-9));
    }

    /** What is set is what was looked at: in whole steps, on the safe side, and within the standard where it says so. */
    @Test
    void settingsAreWholeStepsOnTheSafeSideAndKeepTheStandard() {
        Random random = new Random(1);
        for (int i = 0; i < 60; i++) {
            HardnessUnit unit = HardnessUnit.values()[i % HardnessUnit.values().length];
            ControllerTerms terms = terms(unit, SALT.get(i % SALT.size()), RESERVE.get(i % RESERVE.size()));
            DesignConditions duty = duty(80 + 400 * random.nextDouble(), 10 * random.nextDouble(), 60 + 200 * random.nextDouble(), terms);
            DoseChoice.Option best = DoseSearch.cheapest(Softeners.cubicFeet(0.75 + random.nextInt(4) * 0.25, 10, 54), duty, COST).best();
            MeterSettings set = best.settings();
            String home = "seed 1, home " + i + ", " + terms;
            assertTrue(set.hardnessMgPerL() >= duty.hardness().totalMgPerL() + duty.water().hardnessUncertaintyMgPerL() - 1e-3, home);
            assertTrue(set.capacityGrams() <= best.dosed().capacityGrams() + 1e-3, home);
            whole(set.hardnessMgPerL() / terms.hardness().mgPerL(), home);
            whole(terms.capacityUnit().fromBase(set.capacityGrams()) / terms.capacityStep(), home);
            whole(best.dosed().saltDoseGramsPerLitre() / terms.saltStep().gramsPerLitre(best.dosed().softener(), 12), home);
            assertEquals(set.meterLitres(), 1000 * set.capacityGrams() / set.hardnessMgPerL(), 1e-6, home);
            assertEquals(set.keepsStandard(), duty.isServed(set.policy(), best.dosed().regeneration()), home);
            if (set.reserveLitres() < set.meterLitres()) {
                whole(set.reserveLitres() / duty.reserveStepLitres(set.meterLitres()), home);
            }
        }
    }

    private static void whole(double steps, String home) {
        assertEquals(0, Math.IEEEremainder(steps, 1), 1e-6, home);
    }

    private static DesignConditions duty(double mgPerL, double uncertainMgPerL, double gallonsPerDay, ControllerTerms terms) {
        WaterAnalysis plain = Softeners.water(HardnessUnit.GPG.fromBase(mgPerL), 0, 300);
        WaterAnalysis water = plain.toBuilder().hardnessMgPerL(mgPerL).hardnessUncertaintyMgPerL(uncertainMgPerL).build();
        DesignConditions duty = Softeners.duty(water, gallonsPerDay, 0.4);
        return new DesignConditions(water, water.compensated(CompensationFactors.STANDARD), duty.demand(), duty.days(), duty.longRun(),
                duty.standard(), terms, duty.minimumIntervalDays(), 0, Practice.USUAL);
    }
}
