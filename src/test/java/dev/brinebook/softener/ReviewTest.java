// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.ClockOnWeekdays;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.MeteredImmediate;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.softener.Finding.Code;
import dev.brinebook.source.Sources;
import dev.brinebook.text.Message;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each common mistake, found once and not found once it is corrected; limits are common practice unless said otherwise. */
class ReviewTest {

    private static final double LB = Softeners.POUND_PER_CUBIC_FOOT;
    private static final DesignConditions DUTY = Softeners.duty(20, 0, 240, 0.4);
    private static final DesignConditions IRON = Softeners.duty(20, 1.5, 240, 0.4);
    private static final Softener SOFTENER = Softeners.cubicFeet(1.5, 10, 54);

    private static ExistingSoftener found(Policy policy, double pounds, Map<Kind, Double> minutes, OptionalDouble hardnessGpg,
            OptionalDouble capacityGrains) {
        return found(new SoftenerSettings(SOFTENER, pounds * LB, minutes, policy, 2), pounds, hardnessGpg, capacityGrains,
                OptionalDouble.empty());
    }

    private static ExistingSoftener found(SoftenerSettings setup, double statedPounds, OptionalDouble hardnessGpg,
            OptionalDouble capacityGrains,
            OptionalDouble supply) {
        Softener softener = setup.softener();
        Softener onSite = new Softener(softener.bed(), softener.tankHeightMetres(), softener.salt(), softener.capacity(),
                softener.flows().onSite(OptionalDouble.empty(), supply));
        return new ExistingSoftener(setup.with(onSite), statedPounds * LB, new ExistingSoftener.Meter(map(hardnessGpg,
                HardnessUnit.GPG.toBase(1)),
                map(capacityGrains, CapacityUnit.GRAIN.toBase(1)), setup.policy().meterVolumeLitres()));
    }

    private static OptionalDouble map(OptionalDouble value, double factor) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * factor) : value;
    }

    /** A delayed meter as it should be set for {@code duty} at a dose, with what is given changed. */
    private static ExistingSoftener meter(DesignConditions duty, double pounds, double hardnessGpg, double capacityGrains,
            double reserveShare,
            int override) {
        double litres = capacityGrains / hardnessGpg * Exact.US_GALLON_LITRES;
        MeterSettings right = MeterSettings.of(DosedSoftener.designed(SOFTENER, pounds * LB, 12), duty);
        return found(new MeteredDelayed(litres, right.reserveLitres() * reserveShare, override), pounds, Map.of(),
                OptionalDouble.of(hardnessGpg), OptionalDouble.of(capacityGrains));
    }

    /** Against 8 lb/ft3, which give 24,000 gr/ft3 by the working table: common practice. */
    private static List<Finding> review(ExistingSoftener found, DesignConditions duty) {
        return RightSettings.review(found, duty, 8).findings();
    }

    /** Against the dose that costs least. */
    private static Review cheapest(ExistingSoftener found, DesignConditions duty) {
        return Review.of(found, duty, RightSettings.COST);
    }

    private static Set<Code> codes(ExistingSoftener found, DesignConditions duty) {
        return review(found, duty).stream().map(Finding::code).collect(Collectors.toCollection(
                () -> EnumSet.noneOf(Code.class)));
    }

    private static Finding only(Code code, ExistingSoftener found, DesignConditions duty) {
        return review(found, duty).stream().filter(finding -> finding.code() == code).findFirst().orElseThrow();
    }

    @Test
    void findsNothingWhereTheMeterIsSetRight() {
        assertEquals(Set.of(), codes(meter(DUTY, 8, 20, 36_000, 1, 14), DUTY));
        assertEquals(Set.of(), codes(meter(IRON, 8, 26, 36_000, 1, 3), IRON));
    }

    @ParameterizedTest(name = "{7}")
    @CsvSource({
        "1.5, 20, 36000, 1, 3, 8, HARDNESS_WITHOUT_IRON, hardness set without iron",
        "0, 12, 36000, 1, 14, 8, HARDNESS_TOO_LOW, hardness of another water",
        "0, 25, 36000, 1, 14, 8, HARDNESS_TOO_HIGH, hardness set too high",
        "0, 20, 45000, 1, 14, 8, CAPACITY_ABOVE_DOSE, capacity above what 8 lb give",
        "0, 20, 30000, 1, 14, 8, CAPACITY_BELOW_DOSE, capacity far below what 8 lb give",
        "0, 20, 24000, 1, 14, 10, CAPACITY_BELOW_DOSE MORE_SALT_THAN_NEEDED, less capacity than the lowest dose gives",
        "0, 20, 36000, 1, 14, 10, NAMEPLATE_RULE, 80 % of nameplate with 10 lb/ft3",
        "0, 20, 36000, 0.5, 14, 8, RESERVE_TOO_SMALL, half the reserve",
        "0, 20, 36000, 2, 14, 8, RESERVE_LARGER_THAN_NEEDED, twice the reserve",
        "1.5, 26, 36000, 1, 14, 8, OVERRIDE_TOO_LONG_FOR_IRON, 14 days with iron",
        "1.5, 26, 36000, 1, 0, 8, OVERRIDE_TOO_LONG_FOR_IRON, no override with iron",
        "0, 20, 36000, 1, 0, 8, NO_DAY_OVERRIDE, no override"})
    void findsTheMistakesOfAMeter(double iron, double hardness, double capacity, double reserve, int override,
            double pounds, String expected, String name) {
        DesignConditions duty = iron > 0 ? IRON : DUTY;
        Set<Code> wanted = Arrays.stream(expected.split(" ")).map(Code::valueOf).collect(Collectors.toSet());
        assertEquals(wanted, codes(meter(duty, pounds, hardness, capacity, reserve, override), duty));
    }

    @Test
    void reportsTheSaltOfTheNameplateRule() {
        Finding rule = only(Code.NAMEPLATE_RULE, meter(DUTY, 10, 20, 36_000, 1, 14), DUTY);
        assertEquals(10, rule.set() / LB, 1e-9);
        assertEquals(8, rule.shouldBe() / LB, 1e-6, "the working table gives 24 kgr/ft3 at 8 lb: common practice");
        assertTrue(rule.difference().saltKilograms() > 0);
        assertEquals(0, rule.difference().hardDays(), 3);
    }

    @Test
    void hardnessWithoutIronCostsHardDays() {
        Finding finding = only(Code.HARDNESS_WITHOUT_IRON, meter(IRON, 8, 20, 36_000, 1, 3), IRON);
        assertEquals(26, HardnessUnit.GPG.fromBase(finding.shouldBe()), 1e-9, "20 + 4 x 1.5: common practice");
        Finding capacity = only(Code.CAPACITY_ABOVE_DOSE, meter(DUTY, 8, 20, 45_000, 1, 14), DUTY);
        assertTrue(capacity.difference().hardDays() > 0 && capacity.difference().hardLitres() > 0);
        assertTrue(capacity.difference().saltKilograms() < 0, "the better setting takes more salt, and says so");
    }

    @Test
    void findsTheSameOnAnImmediateMeter() {
        ExistingSoftener immediate = found(new MeteredImmediate(10_000, 0), 8, Map.of(), OptionalDouble.of(12), OptionalDouble.of(45_000));
        assertEquals(EnumSet.of(Code.HARDNESS_TOO_LOW, Code.CAPACITY_ABOVE_DOSE, Code.NO_DAY_OVERRIDE),
                codes(immediate, DUTY));
    }

    @Test
    void leavesAMeterAloneWhoseSettingsAreUnknown() {
        ExistingSoftener unknown = found(new MeteredImmediate(6_000, 14), 8, Map.of(), OptionalDouble.empty(), OptionalDouble.empty());
        assertEquals(Set.of(), codes(unknown, DUTY));
    }

    @ParameterizedTest(name = "every {0} days: {1}")
    @CsvSource({"2, CLOCK_INTERVAL_SHORTER_THAN_NEEDED", "12, CLOCK_INTERVAL_TOO_LONG"})
    void findsAClockThatDoesNotSuitTheWorstDays(int days, Code expected) {
        assertTrue(codes(found(new ClockEveryDays(days), 8, Map.of(), OptionalDouble.empty(), OptionalDouble.empty()), DUTY)
                .contains(expected));
    }

    @Test
    void takesTheLongestGapOfAWeekdayClock() {
        assertEquals(4, ClockReview.longestGapDays(new ClockOnWeekdays(EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.THURSDAY))));
        assertEquals(7, ClockReview.longestGapDays(new ClockOnWeekdays(EnumSet.of(DayOfWeek.SUNDAY))));
        assertEquals(5, ClockReview.longestGapDays(new ClockEveryDays(9, 5)));
    }

    /** By hand, without stress: a capacity of 7.5 days serves seven, one of less than a day none. */
    @Test
    void countsTheDaysThatACapacityServesAtConstantUse() {
        DesignConditions constant = Softeners.plain(Softeners.duty(20, 0, 240, 0));
        double load = constant.dailyLoadGrams();
        assertEquals(7, ClockReview.daysThatServe(new Regeneration(7.5 * load, 1, 1, 60), constant));
        assertEquals(7, ClockReview.daysThatServe(new Regeneration(7 * load * (1 + 1e-9), 1, 1, 60), constant));
        assertEquals(0, ClockReview.daysThatServe(new Regeneration(0.5 * load, 1, 1, 60), constant));
        assertEquals(14, ClockReview.daysThatServe(new Regeneration(1, 1, 1, 60), Softeners.duty(20, 0, 0, 0)), "the usual override");
    }

    @Test
    void aClockThatServesKeepsToTheStandardAndWarnsOfIron() {
        DesignConditions iron = Softeners.duty(20, 1.5, 150, 0.4);
        ExistingSoftener clock = found(new ClockEveryDays(6), 15, Map.of(), OptionalDouble.empty(), OptionalDouble.empty());
        assertTrue(codes(clock, iron).contains(Code.OVERRIDE_TOO_LONG_FOR_IRON));
    }

    @Test
    void findsAClockThatGetsMoreSaltThanItUses() {
        Finding finding = only(Code.MORE_SALT_THAN_NEEDED,
                found(new ClockEveryDays(3), 15, Map.of(), OptionalDouble.empty(), OptionalDouble.empty()), DUTY);
        assertTrue(finding.shouldBe() < 12 * LB && finding.shouldBe() >= 6 * LB - 1e-9);
        assertTrue(finding.difference().saltKilograms() > 0);
        DesignConditions unused = Softeners.duty(20, 0, 0, 0);
        assertEquals(EnumSet.of(Code.MORE_SALT_THAN_NEEDED, Code.CLOCK_INTERVAL_SHORTER_THAN_NEEDED),
                codes(found(new ClockEveryDays(3), 15, Map.of(), OptionalDouble.empty(), OptionalDouble.empty()), unused));
        DesignConditions heavy = Softeners.duty(40, 0, 900, 0.4);
        assertTrue(cheapest(found(new ClockEveryDays(9), 15, Map.of(), OptionalDouble.empty(), OptionalDouble.empty()), heavy)
                .findings().stream().noneMatch(one -> one.code() == Code.MORE_SALT_THAN_NEEDED), "no dose gives what nine such"
                + " days use");
    }

    /** Whoever corrects the refill, the dose, the capacity and the interval at once must not get hard water from it. */
    @ParameterizedTest(name = "refill {0} minutes, {1} lb/ft3")
    @CsvSource({"30, 8", "3, 8", "15, 10", "0, 10", "0, 15"})
    void asksForCapacityAndSaltThatBelongTogether(double minutes, double pounds) {
        Map<Kind, Double> refill = minutes == 0 ? Map.of() : Map.of(Kind.REFILL, minutes);
        double real = minutes == 0 ? pounds : minutes * 0.5 * 2.99 / 1.5;
        SoftenerSettings meter = new SoftenerSettings(SOFTENER, real * LB, refill, meter(DUTY, 8, 20, 36_000, 1, 14).policy(), 2);
        SoftenerSettings.Year metered = cheapest(found(meter, pounds, OptionalDouble.of(20), OptionalDouble.of(36_000),
                OptionalDouble.empty()),
                DUTY).corrected();
        assertTrue(metered.totals().hardDays() <= 1, "the usual service standard");
        double counted = metered.setup().policy().meterVolumeLitres() * HardnessUnit.GPG.toBase(20) / 1000;
        assertTrue(counted <= 1.02 * metered.setup().capacityGrams(), "the meter counts on what the salt restores");
        SoftenerSettings clock = new SoftenerSettings(SOFTENER, real * LB, refill, new ClockEveryDays(2), 2);
        assertTrue(cheapest(found(clock, pounds, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()), DUTY)
                .corrected().totals().hardDays() <= 1, "the usual service standard");
    }

    @Test
    void namesOneIntervalWhereTheClockIsTooLongForTheDaysAndForIron() {
        for (double gallons : new double[] {100, 400}) {
            DesignConditions iron = Softeners.duty(25, 1, gallons, 0.4);
            ExistingSoftener clock = found(new ClockEveryDays(20), 15, Map.of(), OptionalDouble.empty(), OptionalDouble.empty());
            assertEquals(only(Code.CLOCK_INTERVAL_TOO_LONG, clock, iron).shouldBe(),
                    only(Code.OVERRIDE_TOO_LONG_FOR_IRON, clock, iron).shouldBe());
        }
    }

    @ParameterizedTest(name = "{0} minutes at 0.5 gpm for 10 lb/ft3")
    @CsvSource({"6, REFILL_BELOW_DOSE", "10, ", "15, REFILL_ABOVE_DOSE"})
    void findsARefillThatDoesNotGiveTheDose(double minutes, Code expected) {
        double pounds = minutes * 0.5 * 2.99 / 1.5;
        SoftenerSettings setup = new SoftenerSettings(SOFTENER, pounds * LB, Map.of(Kind.REFILL, minutes), new ClockEveryDays(4), 2);
        Set<Code> codes = RightSettings.review(found(setup, 10, OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty()), DUTY, 10).findings().stream().map(Finding::code).collect(Collectors.toSet());
        assertEquals(expected != null, codes.contains(Code.REFILL_BELOW_DOSE) || codes.contains(Code.REFILL_ABOVE_DOSE),
                "each gallon of water dissolves 2.99 lb: Salt Institute saturation, 20 degrees Celsius");
        if (expected != null) {
            Finding finding = RightSettings.review(found(setup, 10, OptionalDouble.empty(), OptionalDouble.empty(),
                    OptionalDouble.empty()), DUTY, 10).findings().stream().filter(one -> one.code() == expected).findFirst()
                    .orElseThrow();
            assertEquals(15 / 0.5 / 2.99, finding.shouldBe(), 0.05, "15 lb at 0.5 gpm");
        }
    }

    @ParameterizedTest(name = "drain {0} gpm: {1}")
    @CsvSource({"1.5, BACKWASH_TOO_WEAK", "3.5, ", "9, BACKWASH_TOO_STRONG", "30, BACKWASH_TOO_STRONG"})
    void findsABackwashThatDoesNotSuitTheTank(double gpm, Code expected) {
        Softener drained = Softeners.cubicFeet(1.5, 10, 54, new CycleFlows(OptionalDouble.of(gpm * Exact.US_GALLON_LITRES),
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()));
        SoftenerSettings setup = new SoftenerSettings(drained, 8 * LB, Map.of(), new ClockEveryDays(4), 2);
        Set<Code> codes = codes(found(setup, 8, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()), DUTY);
        codes.removeIf(code -> !code.name().startsWith("BACKWASH"));
        assertEquals(expected == null ? Set.of() : Set.of(expected), codes, "10 in tank, 12 degrees Celsius, 6 to 8 gpm/ft2"
                + " by Ten States Standards would be 3.3 to 4.4 gpm");
    }

    /** 8 lb/ft3 in 1.5 ft3 make 13.4 gal of 10 % brine, 22 minutes at 0.6 gpm; 0.38 bed volumes are 7 minutes more. */
    @ParameterizedTest(name = "{0} minutes at {1} gpm: {2}")
    @CsvSource({"20, 0.6, true", "27, 0.6, true", "31, 0.6, false", "60, 0.6, false", "20, , false"})
    void findsASlowRinseThatLeavesBrineInTheVoids(double minutes, Double gpm, boolean expected) {
        OptionalDouble brine = gpm == null ? OptionalDouble.empty() : OptionalDouble.of(gpm * Exact.US_GALLON_LITRES);
        Softener softener = Softeners.cubicFeet(1.5, 10, 54, new CycleFlows(OptionalDouble.empty(), brine,
                OptionalDouble.empty(), OptionalDouble.empty()));
        SoftenerSettings setup = new SoftenerSettings(softener, 8 * LB, Map.of(Kind.BRINE_AND_SLOW_RINSE, minutes), new ClockEveryDays(4),
                2);
        ExistingSoftener found = found(setup, 8, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
        assertEquals(expected, codes(found, DUTY).contains(Code.SLOW_RINSE_TOO_SHORT));
        if (expected) {
            assertEquals((13.43 + 11.22) / 0.6, only(Code.SLOW_RINSE_TOO_SHORT, found, DUTY).shouldBe(), 0.1,
                    "brine and one bed volume at 0.6 gpm");
        }
    }

    /** What the drain takes limits it as the supply does: 3.5 gpm lift this bed by half. */
    @ParameterizedTest(name = "{0} gpm where the drain takes {1}")
    @CsvSource({"3.5, 2.7, BACKWASH_ABOVE_DRAIN, 2.5", "3.5, 3.5, '', 0", "1.5, 2.7, BACKWASH_TOO_WEAK, 2.5", "1.5, 1.6, '', 0"})
    void findsABackwashThatTheDrainCannotTake(double gpm, double drain, String expected, double shouldBe) {
        Softener drained = Softeners.cubicFeet(1.5, 10, 54, new CycleFlows(OptionalDouble.of(gpm * Exact.US_GALLON_LITRES),
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty())).onDrain(OptionalDouble.of(drain
                * Exact.US_GALLON_LITRES));
        ExistingSoftener found = new ExistingSoftener(new SoftenerSettings(drained, 8 * LB, Map.of(), new ClockEveryDays(4), 2), 8 * LB,
                new ExistingSoftener.Meter(
                OptionalDouble.empty(), OptionalDouble.empty(), 0));
        List<Finding> findings = review(found, DUTY).stream().filter(finding -> finding.setting() == Setting.BACKWASH).toList();
        assertEquals(expected, findings.stream().map(finding -> finding.code().name()).collect(Collectors.joining(" ")));
        findings.forEach(finding -> assertEquals(shouldBe * Exact.US_GALLON_LITRES, finding.shouldBe(), 1e-9));
        assertEquals(Math.min(gpm, drain) < shouldBe || gpm > drain, !findings.isEmpty());
    }

    /** One flow to set, whatever is wrong with the one that is: 3.5 gpm lift this bed by half. */
    @ParameterizedTest(name = "{0} gpm where the supply gives {1}")
    @CsvSource({"7, 5, BACKWASH_ABOVE_SUPPLY BACKWASH_TOO_STRONG, 3.5", "4, 3, BACKWASH_ABOVE_SUPPLY, 3",
        "7, 40, BACKWASH_TOO_STRONG, 3.5", "3.5, 40, '', 0", "3, 3, '', 0"})
    void findsABackwashThatTheSupplyCannotGive(double gpm, double supply, String expected, double shouldBe) {
        Softener drained = Softeners.cubicFeet(1.5, 10, 54, new CycleFlows(OptionalDouble.of(gpm * Exact.US_GALLON_LITRES),
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()));
        SoftenerSettings setup = new SoftenerSettings(drained, 8 * LB, Map.of(), new ClockEveryDays(4), 2);
        List<Finding> findings = review(found(setup, 8, OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.of(supply * Exact.US_GALLON_LITRES)), DUTY).stream().filter(finding -> finding.setting()
                == Setting.BACKWASH).toList();
        assertEquals(expected, findings.stream().map(finding -> finding.code().name()).collect(Collectors.joining(" ")));
        findings.forEach(finding -> assertEquals(shouldBe * Exact.US_GALLON_LITRES, finding.shouldBe(), 1e-9));
    }

    @ParameterizedTest
    @CsvSource({"2, false", "1, false", "3, false", "7, true", "12, true", "19, true"})
    void findsARegenerationInUseHours(int hour, boolean expected) {
        SoftenerSettings setup = new SoftenerSettings(SOFTENER, 8 * LB, Map.of(), new ClockEveryDays(4), hour);
        ExistingSoftener found = found(setup, 8, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
        assertEquals(expected, codes(found, DUTY).contains(Code.REGENERATION_IN_USE_HOURS), "DAIAD hourly multipliers");
        if (expected) {
            assertTrue(only(Code.REGENERATION_IN_USE_HOURS, found, DUTY).difference().hardLitres() > 0);
        }
    }

    @Test
    void countsADoseOutsideTheTableAsItsNearestEnd() {
        SoftenerSettings flood = new SoftenerSettings(SOFTENER, 30 * LB, Map.of(), new ClockEveryDays(4), 2);
        assertEquals(SOFTENER.capacityGrams(20 * LB), flood.capacityGrams(), 1e-9);
        assertEquals(365 / 4.0 * 30 * LB * SOFTENER.bed().resinLitres(), flood.year(DUTY).totals().saltGrams(), 1e-6,
                "the salt is used all the same");
        assertEquals(SOFTENER.capacityGrams(3 * LB), new SoftenerSettings(SOFTENER, LB, Map.of(), new ClockEveryDays(4), 2)
                .capacityGrams(), 1e-9);
    }

    @Test
    void everyFindingHasASourceAndComesInOrder() {
        for (Code code : Code.values()) {
            assertEquals(code.sourceKey(), Sources.get(code.sourceKey()).key());
            assertTrue(Message.of(code).toString().endsWith(".") && Message.of(code).inMetricUnits(true).toString().endsWith("."),
                    code.name());
        }
        List<Finding> findings = review(meter(IRON, 15, 12, 48_000, 0.2, 0), IRON);
        assertEquals(findings.stream().sorted(Comparator.comparingInt(Finding::step)).toList(), findings);
        assertTrue(findings.size() >= 3);
    }
}
