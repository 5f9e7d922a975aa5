// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.household.HourlyProfile;
import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.MeteredImmediate;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.Finding.Code;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What a setting costs in a year, and where it is just right. */
class SettingDifferenceTest {

    private static final double LB = Softeners.POUND_PER_CUBIC_FOOT;
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final Softener SOFTENER = Softeners.cubicFeet(1.5, 10, 54);
    /** 4,800 grains every day; 8 lb/ft3 give 36,000: working table, common practice. */
    private static final DesignConditions DUTY = Softeners.duty(20, 0, 240, 0);

    /** Against 8 lb/ft3. */
    private static List<Finding> review(ExistingSoftener found, DesignConditions duty) {
        return RightSettings.review(found, duty, 8).findings();
    }

    private static SoftenerSettings setup(Policy policy) {
        return new SoftenerSettings(SOFTENER, 8 * LB, Map.of(), policy, 2);
    }

    private static ExistingSoftener found(Policy policy, OptionalDouble hardnessGpg, OptionalDouble capacityGrains) {
        return new ExistingSoftener(setup(policy), 8 * LB, new ExistingSoftener.Meter(
                hardnessGpg.isPresent() ? OptionalDouble.of(HardnessUnit.GPG.toBase(hardnessGpg.getAsDouble())) : NONE,
                capacityGrains.isPresent() ? OptionalDouble.of(CapacityUnit.GRAIN.toBase(capacityGrains.getAsDouble())) : NONE,
                policy.meterVolumeLitres()));
    }

    private static Set<Code> ofDays(int clockDays, DesignConditions duty) {
        return review(found(new ClockEveryDays(clockDays), NONE, NONE), duty).stream()
                .filter(finding -> finding.setting() == Setting.INTERVAL).map(Finding::code).collect(Collectors.toSet());
    }

    private static Finding only(Code code, ExistingSoftener found) {
        return review(found, DUTY).stream().filter(finding -> finding.code() == code).findFirst().orElseThrow();
    }

    /** Worse less better, each by hand; hard water of exhausted beds and of regenerations are added. */
    @Test
    void isTheWorseYearLessTheBetter() {
        SoftenerSettings.Year worse = new SoftenerSettings.Year(null, null, new YearlyTotals(90, 0, 5_000, 900, 0, 0, 7, 300, 0, 0, 0), 40);
        SoftenerSettings.Year better = new SoftenerSettings.Year(null, null, new YearlyTotals(60, 0, 2_000, 500, 0, 0, 4, 100, 0, 0, 0),
                15);
        assertEquals(new SoftenerSettings.Difference(3, 400, 3, 225), worse.minus(better));
    }

    /** By hand: 91 nights of a clock of 4 days, each with the share of 240 gallons that is used meanwhile. */
    @Test
    void countsTheHardWaterOfTheHoursOfRegeneration() {
        SoftenerSettings morning = setup(new ClockEveryDays(4)).atHour(7);
        double share = HourlyProfile.share(7, morning.cycle(12).regeneration(1, 1).minutes());
        assertEquals(365 / 4.0 * share * 240 * Exact.US_GALLON_LITRES, morning.year(DUTY).hardWhileRegeneratingLitres(), 1e-6);
    }

    /** CIAAW: 2 x 22.990 and 2 x 39.098 for 100.086 of hardness, and one of them at a time. */
    @Test
    void softensWithTheIonOfTheSalt() {
        double removed = HardnessUnit.GPG.toBase(20);
        assertEquals(0.4594 * removed, DUTY.softenedWith(Salt.SODIUM_CHLORIDE).addedSodiumMgPerL(), 0.02);
        assertEquals(0, DUTY.softenedWith(Salt.SODIUM_CHLORIDE).addedPotassiumMgPerL());
        assertEquals(0.7813 * removed, DUTY.softenedWith(Salt.POTASSIUM_CHLORIDE).addedPotassiumMgPerL(), 0.02);
    }

    @Test
    void runsTheMinutesThatAreSet() {
        DosedSoftener dosed = DosedSoftener.designed(SOFTENER, 8 * LB, 12).withMinutes(Map.of(CycleStep.Kind.BACKWASH, 7.0));
        assertEquals(7, dosed.cycle().step(CycleStep.Kind.BACKWASH).minutes());
        assertEquals(8 * LB, dosed.saltDoseGramsPerLitre());
    }

    /** A meter runs on its litres: capacity over hardness, so a setting that is corrected changes them in proportion. */
    @Test
    void correctsTheLitresOfAMeter() {
        Policy meter = new MeteredImmediate(9_000, 14);
        Finding hardness = only(Code.HARDNESS_TOO_LOW, found(meter, OptionalDouble.of(12), OptionalDouble.of(36_000)));
        assertEquals(setup(meter).year(DUTY).minus(setup(new MeteredImmediate(9_000 * 12 / 20.0, 14)).year(DUTY)),
                hardness.difference());
        assertTrue(hardness.difference().hardDays() > 0);
        Finding capacity = only(Code.CAPACITY_ABOVE_DOSE, found(meter, OptionalDouble.of(20), OptionalDouble.of(48_000)));
        double corrected = 9_000 * capacity.shouldBe() / capacity.set();
        assertEquals(setup(meter).year(DUTY).minus(setup(new MeteredImmediate(corrected, 14)).year(DUTY)),
                capacity.difference());
        assertEquals(Setting.Measure.CAPACITY, capacity.setting().measure());
    }

    /** 36,000 grains last 7 of 7.5 days, the 30,000 of the lowest dose 6; with 1 mg/L of iron not more than 14 times 0.3. */
    @Test
    void leavesAClockAloneThatIsJustRight() {
        DesignConditions plain = Softeners.plain(DUTY);
        assertEquals(Set.of(), ofDays(7, plain));
        assertEquals(Set.of(Code.CLOCK_INTERVAL_TOO_LONG), ofDays(8, plain));
        assertEquals(Set.of(Code.CLOCK_INTERVAL_SHORTER_THAN_NEEDED), ofDays(5, plain));
        assertEquals(Set.of(Code.CLOCK_INTERVAL_TOO_LONG), ofDays(7, DUTY), "no room for more use or less capacity");
        assertEquals(Set.of(), ofDays(6, DUTY));
        DesignConditions iron = Softeners.duty(20, 1, 240, 0);
        assertTrue(iron.iron() && !Softeners.duty(20, 0.3, 240, 0).iron(), "40 CFR 143.3: above 0.3 mg/L");
        assertEquals(Set.of(), ofDays(4, iron));
    }

    /** Water of 300 mg/L with 20 meq/L of sodium holds 1 gpg from 6 to 8 lb/ft3 on: independent stage model. */
    @Test
    void findsADoseThatDoesNotHoldTheEndPoint() {
        Softener salty = Softeners.salty(20);
        DesignConditions duty = Softeners.duty(17.5, 0, 100, 0);
        ExistingSoftener low = new ExistingSoftener(new SoftenerSettings(salty, 4 * LB, Map.of(), new ClockEveryDays(4), 2), 4 * LB,
                new ExistingSoftener.Meter(NONE, NONE, 0));
        Finding finding = Review.of(low, duty, RightSettings.COST).findings().stream()
                .filter(one -> one.code() == Code.DOSE_DOES_NOT_HOLD_END_POINT).findFirst().orElseThrow();
        assertEquals(4 * LB, finding.set(), 1e-9);
        assertTrue(finding.shouldBe() > 6 * LB && salty.holdsEndPoint(finding.shouldBe()), finding.shouldBe() / LB + " lb/ft3");
        ExistingSoftener high = new ExistingSoftener(new SoftenerSettings(salty, 9 * LB, Map.of(), new ClockEveryDays(4), 2), 9 * LB,
                new ExistingSoftener.Meter(NONE, NONE, 0));
        assertTrue(review(high, duty).stream().noneMatch(one -> one.code() == Code.DOSE_DOES_NOT_HOLD_END_POINT));
    }
}
