// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.MeteredImmediate;
import dev.brinebook.regeneration.Policy;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What hangs on a setting that was not read, on constant use, by hand: 1.5 cubic feet, 4,800 grains every day. */
class QuestionTest {

    private static final double LB = Softeners.POUND_PER_CUBIC_FOOT;
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final Softener SOFTENER = Softeners.cubicFeet(1.5, 10, 54);
    private static final DesignConditions DUTY = Softeners.duty(20, 0, 240, 0);
    private static final DesignConditions IRON = Softeners.duty(20, 1.5, 240, 0);
    /** 36,000 grains, which 8 lb/ft3 restore (working table, common practice), over 20 gpg: 7.5 days. */
    private static final MeteredImmediate METER = new MeteredImmediate(1_800 * Exact.US_GALLON_LITRES, 4);

    private static ExistingSoftener found(Policy policy, Setting... unknown) {
        Set<Setting> unread = EnumSet.noneOf(Setting.class);
        unread.addAll(List.of(unknown));
        return new ExistingSoftener(new SoftenerSettings(SOFTENER, 8 * LB, Map.of(), policy, 2), 8 * LB, new ExistingSoftener.Meter(NONE,
                NONE,
                policy.meterVolumeLitres()), unread);
    }

    private static void saltOfYears(double lowPounds, double highPounds, Question question) {
        assertEquals(lowPounds, pounds(question.low()), 0.01 * lowPounds);
        assertEquals(highPounds, pounds(question.high()), 0.01 * highPounds);
    }

    private static double pounds(Question.End end) {
        return end.year().totals().saltGrams() / 1000 / Exact.POUND_KILOGRAMS;
    }

    private static Question only(ExistingSoftener found, DesignConditions duty) {
        List<Question> questions = Question.of(found, duty);
        assertEquals(1, questions.size());
        return questions.get(0);
    }

    @Test
    void aDoseFromSixToFifteenPounds() {
        Question dose = only(found(new ClockEveryDays(4), Setting.SALT_DOSE), DUTY);
        assertEquals(6 * LB, dose.low().value(), 1e-9);
        assertEquals(15 * LB, dose.high().value(), 1e-9);
        saltOfYears(365 / 4.0 * 1.5 * 6, 365 / 4.0 * 1.5 * 15, dose);
    }

    @Test
    void anOverrideFromThreeToFourteenDays() {
        Question override = only(found(METER, Setting.DAY_OVERRIDE), DUTY);
        assertEquals(3, override.low().value(), "every 3 days at most with iron: Water Technology, 2010");
        assertEquals(14, override.high().value());
        saltOfYears(365 / 3.0 * 1.5 * 8, 365 / 7.5 * 1.5 * 8, override);
    }

    /** 20 as tested, 26 with 4 for each mg/L of iron: common practice. */
    @Test
    void aHardnessWithAndWithoutIron() {
        Question hardness = only(found(METER.withOverride(14), Setting.HARDNESS), IRON);
        assertEquals(20, HardnessUnit.GPG.fromBase(hardness.low().value()), 1e-9);
        assertEquals(26, HardnessUnit.GPG.fromBase(hardness.high().value()), 1e-9);
    }

    /** Without iron the two are the same, an interval is no setting of a meter, and what was read is not asked for. */
    @Test
    void asksForNothingThatChangesNothing() {
        assertEquals(List.of(), Question.of(found(METER, Setting.HARDNESS), DUTY));
        assertEquals(List.of(), Question.of(found(METER, Setting.RESERVE, Setting.INTERVAL), DUTY));
        assertEquals(List.of(), Question.of(found(new ClockEveryDays(4), Setting.HARDNESS, Setting.CAPACITY, Setting.DAY_OVERRIDE), DUTY));
        assertEquals(List.of(), Question.of(found(METER), DUTY));
    }
}
