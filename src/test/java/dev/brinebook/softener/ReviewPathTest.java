// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.quantity.Exact;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.ClockOnWeekdays;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.MeteredImmediate;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.TwinAlternating;
import dev.brinebook.resin.Salt;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Findings as one path, on softeners set at random in homes generated at random (seed 11): properties of all of them. */
class ReviewPathTest {

    /** More are asked for with -Dhomes=500. */
    private static final int HOMES = Integer.getInteger("homes", 200);
    private static final RunningCost COST = RightSettings.COST;
    private static final double LB = Softeners.POUND_PER_CUBIC_FOOT;
    private static final double CELSIUS = 12;
    private static final double CENT = 0.01;

    /** A softener set at random, with its review. */
    private record Case(int number, DesignConditions duty, ExistingSoftener found, Review review) {

        String where() {
            return "seed 11, home " + number + ": " + found + " " + review.findings();
        }
    }

    private static List<Case> cases;

    @BeforeAll
    static void draw() {
        Random random = new Random(11);
        cases = new ArrayList<>();
        for (int i = 0; i < HOMES; i++) {
            ClosedLoopTest.Home home = ClosedLoopTest.Home.drawn(random);
            DesignConditions duty = home.duty();
            ExistingSoftener found = found(home.softener(), duty, random);
            cases.add(new Case(i, duty, found, Review.of(found, duty, COST)));
        }
    }

    private static ExistingSoftener found(Softener plain, DesignConditions duty, Random random) {
        OptionalDouble drain = random.nextBoolean() ? OptionalDouble.empty()
                : OptionalDouble.of((1 + 0.5 * random.nextInt(18)) * Exact.US_GALLON_LITRES);
        OptionalDouble refillFlow = random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(0.5 * Exact.US_GALLON_LITRES);
        OptionalDouble brine = random.nextInt(3) > 0 ? OptionalDouble.empty() : OptionalDouble.of(0.6 * Exact.US_GALLON_LITRES);
        Softener softener = new Softener(plain.bed(), plain.tankHeightMetres(), plain.salt(), plain.capacity(),
                new CycleFlows(drain, brine, OptionalDouble.empty(), refillFlow).onSite(OptionalDouble.empty(), random.nextInt(3) == 0
                        ? OptionalDouble.of(4 * Exact.US_GALLON_LITRES) : OptionalDouble.empty()));
        double stated = (5 + 0.5 * random.nextInt(26)) * LB;
        Map<CycleStep.Kind, Double> minutes = new EnumMap<>(CycleStep.Kind.class);
        double real = stated;
        if (refillFlow.isPresent()) {
            double refill = CycleDesign.refillLitres(Salt.SODIUM_CHLORIDE, softener.saltGrams(stated), CELSIUS)
                    / refillFlow.getAsDouble() * (0.7 + 0.6 * random.nextDouble());
            minutes.put(CycleStep.Kind.REFILL, refill);
            real = CycleDesign.saltGramsOfRefill(Salt.SODIUM_CHLORIDE, refill * refillFlow.getAsDouble(), CELSIUS)
                    / softener.bed().resinLitres();
        }
        if (brine.isPresent()) {
            minutes.put(CycleStep.Kind.BRINE_AND_SLOW_RINSE, 20 + 60 * random.nextDouble());
        }
        double capacity = softener.capacityGrams(stated) * (0.7 + 0.7 * random.nextDouble());
        double hardness = duty.settingMgPerL() * (0.7 + 0.6 * random.nextDouble());
        Policy policy = policy(Policy.nearestMeterLitres(1000 * capacity / hardness), duty, random);
        SoftenerSettings setup = new SoftenerSettings(softener, real, minutes, policy, random.nextInt(4) == 0 ? random.nextInt(24) : 2);
        Set<Setting> unknown = EnumSet.noneOf(Setting.class);
        List.of(Setting.SALT_DOSE, Setting.CAPACITY, Setting.HARDNESS, Setting.RESERVE, Setting.DAY_OVERRIDE).forEach(setting -> {
            if (random.nextInt(8) == 0) {
                unknown.add(setting);
            }
        });
        boolean meter = !policy.byClock();
        return new ExistingSoftener(setup, stated, new ExistingSoftener.Meter(meter && !unknown.contains(Setting.HARDNESS)
                ? OptionalDouble.of(hardness)
                : OptionalDouble.empty(), meter && !unknown.contains(Setting.CAPACITY) ? OptionalDouble.of(capacity)
                : OptionalDouble.empty(), policy.meterVolumeLitres()), unknown);
    }

    private static Policy policy(double litres, DesignConditions duty, Random random) {
        int override = List.of(0, 4, 7, 14, 20).get(random.nextInt(5));
        return switch (random.nextInt(6)) {
            case 0, 1 -> new ClockEveryDays(1 + random.nextInt(12));
            case 2 -> new ClockOnWeekdays(EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.of(2 + random.nextInt(6))));
            case 3 -> new MeteredImmediate(litres, override);
            case 4 -> new TwinAlternating(litres, override);
            default -> new MeteredDelayed(litres, 3 * random.nextDouble() * duty.meanLitres(), override);
        };
    }

    @Test
    void sumToThePresentYearLessTheYearSetRight() {
        Set<Setting> seen = EnumSet.noneOf(Setting.class);
        Set<Finding.Code> codes = EnumSet.noneOf(Finding.Code.class);
        for (Case one : cases) {
            SoftenerSettings.Difference sum = one.review().findings()
                    .stream().map(Finding::difference).reduce(SoftenerSettings.Difference.NONE,
                    SoftenerSettings.Difference::plus);
            SoftenerSettings.Difference whole = one.review().asFound().minus(one.review().corrected());
            assertEquals(whole.saltKilograms(), sum.saltKilograms(), 1e-6, one.where());
            assertEquals(whole.waterLitres(), sum.waterLitres(), 1e-6, one.where());
            assertEquals(whole.hardDays(), sum.hardDays(), 1e-6, one.where());
            assertEquals(whole.hardLitres(), sum.hardLitres(), 1e-6, one.where());
            one.review().findings().forEach(finding -> {
                seen.add(finding.setting());
                codes.add(finding.code());
            });
        }
        assertEquals(EnumSet.allOf(Setting.class), seen, "every setting is found wrong somewhere");
        assertTrue(codes.size() >= 20, codes.toString());
    }

    @Test
    void noFindingCostsMoreWithoutStoppingHardWaterButWhatProtects() {
        for (Case one : cases) {
            double cost = COST.ofYear(one.review().asFound().totals());
            for (List<Finding> step : steps(one.review()).values()) {
                SoftenerSettings.Difference difference = step.get(0).difference();
                double saved = COST.ofRegeneration(1000 * difference.saltKilograms(), difference.waterLitres());
                boolean protects = step.stream().anyMatch(finding -> finding.code().purpose() == Finding.Purpose.PROTECT);
                assertTrue(protects || saved >= -1e-3 * cost - CENT || difference.hardDays() > 0 || nowServed(one), one.where());
                cost -= saved;
            }
            boolean protects = one.review().findings().stream().anyMatch(finding -> finding.code().purpose()
                    == Finding.Purpose.PROTECT);
            SoftenerSettings.Difference whole = one.review().asFound().minus(one.review().corrected());
            assertTrue(protects || COST.ofRegeneration(1000 * whole.saltKilograms(), whole.waterLitres()) >= -CENT
                    || whole.hardDays() > 0 || one.review().findings().isEmpty() || nowServed(one), one.where());
        }
    }

    /** Whether the standard, with its room for more use and less capacity, is kept only after the findings. */
    private static boolean nowServed(Case one) {
        SoftenerSettings found = one.found().setup();
        SoftenerSettings right = one.review().corrected().setup();
        return !one.duty().isServed(found.policy(), found.regeneration(CELSIUS))
                && one.duty().isServed(right.policy(), right.regeneration(CELSIUS));
    }

    private static Map<Integer, List<Finding>> steps(Review review) {
        Map<Integer, List<Finding>> steps = new TreeMap<>();
        review.findings().forEach(finding -> steps.computeIfAbsent(finding.step(), step -> new ArrayList<>()).add(finding));
        return steps;
    }

    /** What is to be set is what the same control set right has, in the steps that a controller takes. */
    @Test
    void setsWhatTheTargetSets() {
        for (Case one : cases) {
            SoftenerSettings right = SetRight.of(one.found(), one.duty(), COST).setup();
            for (Finding finding : one.review().findings()) {
                double expected = switch (finding.setting()) {
                    case SALT_DOSE -> right.saltDoseGramsPerLitre();
                    case HARDNESS -> one.duty().settingMgPerL();
                    case CAPACITY -> right.policy().meterVolumeLitres() * one.duty().settingMgPerL() / 1000;
                    case RESERVE -> ((MeteredDelayed) right.policy()).reserveLitres();
                    case DAY_OVERRIDE -> right.policy().overrideDays();
                    case INTERVAL -> ((ClockEveryDays) right.policy()).days();
                    case BACKWASH -> right.softener().flows().drainLitresPerMinute().orElseThrow();
                    case REGENERATION_HOUR -> right.regenerationHour();
                    case REFILL, SLOW_RINSE -> finding.shouldBe();
                };
                assertEquals(expected, finding.shouldBe(), 1e-9 * expected, finding + " " + one.where());
                assertTrue(Math.abs(finding.set() - finding.shouldBe()) > 1e-9, finding + " " + one.where());
            }
        }
    }

    @Test
    void asksAgainOfWhatWasCorrectedAndFindsNothing() {
        for (Case one : cases) {
            List<Finding> again = Review.of(corrected(one), one.duty(), COST).findings();
            assertEquals(List.of(), again, one.where());
        }
    }

    private static ExistingSoftener corrected(Case one) {
        Map<Setting, Double> set = new HashMap<>();
        one.review().findings().forEach(finding -> set.put(finding.setting(), finding.shouldBe()));
        ExistingSoftener found = one.found();
        SoftenerSettings end = one.review().corrected().setup();
        boolean refilled = set.containsKey(Setting.REFILL);
        double stated = Optional.ofNullable(set.get(Setting.SALT_DOSE)).orElse(found.statedDoseGramsPerLitre());
        Map<CycleStep.Kind, Double> minutes = new HashMap<>(end.minutes());
        if (refilled) {
            minutes.put(CycleStep.Kind.REFILL, set.get(Setting.REFILL));
        }
        SoftenerSettings setup = new SoftenerSettings(end.softener(), end.saltDoseGramsPerLitre(), minutes, end.policy(),
                end.regenerationHour());
        return new ExistingSoftener(setup, stated, new ExistingSoftener.Meter(given(found.meter().hardnessMgPerL(),
                set.get(Setting.HARDNESS)),
                given(found.meter().capacityGrams(), set.get(Setting.CAPACITY)), end.policy().meterVolumeLitres()),
                found.unknown());
    }

    private static OptionalDouble given(OptionalDouble before, Double after) {
        return after == null ? before : OptionalDouble.of(after);
    }

    /** No finding names what was not read, nor what belongs to a dose that was not read. */
    @Test
    void leavesAloneWhatWasNotRead() {
        int asked = 0;
        for (Case one : cases) {
            for (Finding finding : one.review().findings()) {
                assertTrue(!one.found().unknown().contains(finding.setting()), one.where());
                assertTrue(!one.found().unknown().contains(Setting.SALT_DOSE) || finding.setting().group() != Setting.Group.SALT,
                        one.where());
            }
            List<Question> questions = Question.of(one.found(), one.duty());
            asked += questions.size();
            assertTrue(questions.stream().allMatch(question -> one.found().unknown().contains(question.setting())), one.where());
        }
        assertTrue(asked > HOMES / 10, asked + " questions");
    }

    /** What stops hard water comes before what saves, but for dose and reserve, which may go with another; steps count up. */
    @Test
    void comesInOrder() {
        for (Case one : cases) {
            List<Finding> findings = one.review().findings();
            assertEquals(findings.stream().sorted(Comparator.comparingInt(Finding::step)).toList(), findings, one.where());
            List<Finding.Purpose> purposes = findings.stream().filter(finding -> finding.setting().group() != Setting.Group.SALT
                    && finding.setting() != Setting.SLOW_RINSE && finding.setting() != Setting.RESERVE)
                    .map(finding -> finding.code().purpose()).distinct().toList();
            assertEquals(purposes.stream().sorted().toList(), purposes, one.where());
        }
    }
}
