package dev.brinebook.request.softener;

import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.TellsKind;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.ClockOnWeekdays;
import dev.brinebook.regeneration.MeteredImmediate;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.TwinAlternating;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.Setting;
import dev.brinebook.water.Hardness;
import dev.brinebook.wording.Message;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

@About("What starts the regenerations, and how it is set.")
public record ControlRequest(
        @Property(value = "The kind: a clock that starts by days whatever was used, a meter that waits for the hour of"
                + " regeneration, a meter that starts at once, or two beds of which one is always in service.",
                required = true, example = "\"clock\"") @TellsKind Kind kind,
        @Property(value = "Days between regenerations. Give this, or weekdays.", kinds = "clock", min = 1,
                max = Policy.MAX_INTERVAL_DAYS, unit = "days", example = "4") Integer everyDays,
        @Property(value = "Weekdays on which it regenerates. Give this, or everyDays.", kinds = "clock", minItems = 1,
                maxItems = 7, example = "[\"monday\", \"thursday\"]") List<DayOfWeek> weekdays,
        @Property(value = "The hardness set on the meter.", exceptKinds = "clock", min = 0, aboveMin = true,
                max = Hardness.MAX_MG_PER_L, unit = "mg/L",
                fallback = "the compensated hardness and the uncertainty of the test, in steps of the controller")
        HardnessQuantity hardnessSetting,
        @Property(value = "The capacity set on the meter.", exceptKinds = "clock", min = 0, aboveMin = true,
                max = ControlRequest.MAX_CAPACITY_GRAMS, unit = "g", fallback = "the capacity that the salt dose restores")
        CapacityQuantity capacitySetting,
        @Property(value = "What the meter keeps back for the day after its count is read.", kinds = "meteredDelayed",
                fallback = "the smallest that keeps to the service standard")
        ReserveRequest reserve,
        @Property(value = "Days after which it regenerates whatever was used; 0 for never.", min = 0,
                max = Policy.MAX_INTERVAL_DAYS, unit = "days", example = "14",
                fallback = "0 for a clock; for a meter 14, and where iron and manganese together are above 0.3 mg/L fewer, down to 3")
        Integer dayOverride,
        @Property(value = "Hour of the day at which it regenerates.", min = 0, max = 23, example = "2", fallback = "2")
        Integer regenerationHour) implements Checked {

    /** A thousand kilograins: above every household bed. */
    static final double MAX_CAPACITY_GRAMS = 100_000;

    /** What starts a regeneration. */
    public enum Kind {
        CLOCK, METERED_DELAYED, METERED_IMMEDIATE, TWIN_ALTERNATING
    }

    @Override
    public void check(Violations at) {
        if (kind == Kind.CLOCK) {
            if (everyDays != null && weekdays != null) {
                at.add("everyDays", Code.INCONSISTENT, Message.of("must be left out when weekdays are given"));
            } else if (everyDays == null && weekdays == null && !at.here()) {
                at.add("everyDays", Code.MISSING, Message.of("everyDays is missing: a clock needs it, or weekdays"));
            }
        }
    }

    /**
     * The policy in the domain.
     *
     * @param dosed the softener at the dose it gets
     * @param duty what it is there to do
     */
    public Policy toPolicy(DosedSoftener dosed, Duty duty, Explanation explanation) {
        int override = dayOverride != null ? dayOverride : defaultOverride(duty);
        explanation.assume("control.dayOverride", override == 0 ? Message.of("none")
                : Message.counted("{0} day", "{0} days", override), dayOverride == null ? Origin.DEFAULT : Origin.CALLER);
        if (kind == Kind.CLOCK) {
            return everyDays != null ? new ClockEveryDays(everyDays, override)
                    : new ClockOnWeekdays(EnumSet.copyOf(weekdays), override);
        }
        double meterLitres = meterLitres(dosed, duty, explanation);
        if (kind == Kind.METERED_IMMEDIATE) {
            return new MeteredImmediate(meterLitres, override);
        }
        if (kind == Kind.TWIN_ALTERNATING) {
            return new TwinAlternating(meterLitres, override);
        }
        explanation.assume("control.reserve", reserve == null ? Message.of("the smallest that keeps to the service standard")
                : Message.verbatim(WireNames.of(reserve.rule())), reserve == null ? Origin.DEFAULT : Origin.CALLER);
        return reserve == null ? MeterSettings.delayed(meterLitres, override, dosed.regeneration(), duty)
                : reserve.toPolicy(meterLitres, duty, override);
    }

    /** Settings of the control that were not given. */
    Set<Setting> unread() {
        Set<Setting> unread = EnumSet.noneOf(Setting.class);
        if (regenerationHour == null) {
            unread.add(Setting.REGENERATION_HOUR);
        }
        if (kind == Kind.CLOCK) {
            return unread;
        }
        if (hardnessSetting == null) {
            unread.add(Setting.HARDNESS);
        }
        if (capacitySetting == null) {
            unread.add(Setting.CAPACITY);
        }
        if (dayOverride == null) {
            unread.add(Setting.DAY_OVERRIDE);
        }
        if (kind == Kind.METERED_DELAYED && reserve == null) {
            unread.add(Setting.RESERVE);
        }
        return unread;
    }

    /** Days after which a control regenerates whatever was used, when the caller does not say. [CP-CYCLE]. */
    private int defaultOverride(Duty duty) {
        return kind == Kind.CLOCK ? Policy.NO_OVERRIDE : MeterSettings.overrideDays(duty);
    }

    /** Water that the meter counts down from, by the capacity and the hardness set on it. */
    private double meterLitres(DosedSoftener dosed, Duty duty, Explanation explanation) {
        HardnessUnit unit = duty.controller().hardness().unit();
        double hardness = explanation.orDefault("control.hardnessSetting", hardnessSetting,
                duty.settingMgPerL(), Message.of("{0} {1}, the compensated hardness and the uncertainty of the test",
                        Rounding.answer(unit.fromBase(duty.settingMgPerL())), unit.symbol()));
        double capacity = explanation.orDefault("control.capacitySetting", capacitySetting, dosed.capacityGrams(),
                Message.of("the capacity of the dose"));
        return Policy.nearestMeterLitres(1000 * capacity / hardness);
    }
}
