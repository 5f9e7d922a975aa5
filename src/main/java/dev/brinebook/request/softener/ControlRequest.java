// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Discriminator;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
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
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.Setting;
import dev.brinebook.text.Message;
import dev.brinebook.water.Hardness;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

@SchemaDescription("Control type that starts the regenerations, and its settings.")
public record ControlRequest(
        @Property(value = "The kind of control: a clock that starts by days regardless of use, a meter that starts at the set hour, a "
                + "meter that starts immediately, or alternating twin tanks, one of which is always in service.",
                required = true, example = "\"clock\"") @Discriminator Kind kind,
        @Property(value = "Days between regenerations. Give this, or weekdays.", kinds = "clock", min = 1,
                max = Policy.MAX_INTERVAL_DAYS, unit = "days", example = "4") Integer everyDays,
        @Property(value = "Weekdays on which it regenerates. Give this, or everyDays.", kinds = "clock", minItems = 1,
                maxItems = 7, example = "[\"monday\", \"thursday\"]") List<DayOfWeek> weekdays,
        @Property(value = "The hardness set on the meter.", exceptKinds = "clock", min = 0, aboveMin = true,
                max = Hardness.MAX_MG_PER_L, unit = "mg/L",
                fallback = "the compensated hardness and the uncertainty of the test, in steps of the controller")
        HardnessQuantity hardnessSetting,
        @Property(value = "The capacity set on the meter.", exceptKinds = "clock", min = 0, aboveMin = true,
                max = ControlRequest.MAX_CAPACITY_GRAMS, unit = "g", fallback = "the capacity restored by the salt dose")
        CapacityQuantity capacitySetting,
        @Property(value = "Reserve of a delayed meter, for the day after it decides to regenerate.", kinds = "meteredDelayed",
                fallback = "the smallest that meets the service standard")
        ReserveRequest reserve,
        @Property(value = "Day override: days after which it regenerates regardless of use. 0 means never.", min = 0,
                max = Policy.MAX_INTERVAL_DAYS, unit = "days", example = "14",
                fallback = "0 for a clock; 14 for a meter, or fewer, down to 3, if iron and manganese together exceed 0.3 mg/L")
        Integer dayOverride,
        @Property(value = "Hour of regeneration.", min = 0, max = 23, example = "2", fallback = "2")
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
                at.add("everyDays", Code.INCONSISTENT, Message.of("problem.softener.omitWhenWeekdaysGiven"));
            } else if (everyDays == null && weekdays == null && !at.here()) {
                at.add("everyDays", Code.MISSING, Message.of("control.missingEverydaysOrWeekdays"));
            }
        }
    }

    /**
     * The policy in the domain.
     *
     * @param dosed the softener at the dose it gets
     * @param duty the demand on it
     */
    public Policy toPolicy(DosedSoftener dosed, DesignConditions duty, Explanation explanation) {
        int override = dayOverride != null ? dayOverride : defaultOverride(duty);
        explanation.assume("control.dayOverride", override == 0 ? Message.of("assumed.softener.none")
                : Message.of("assumed.softener.days", override), dayOverride == null ? Origin.DEFAULT : Origin.CALLER);
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
        explanation.assume("control.reserve", reserve == null ? Message.of("assumed.softener.smallestReserveMeetsService")
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

    /** Default day override of a control. [CP-CYCLE]. */
    private int defaultOverride(DesignConditions duty) {
        return kind == Kind.CLOCK ? Policy.NO_OVERRIDE : MeterSettings.overrideDays(duty);
    }

    /** Water that the meter counts down from, by the capacity and the hardness set on it. */
    private double meterLitres(DosedSoftener dosed, DesignConditions duty, Explanation explanation) {
        HardnessUnit unit = duty.controller().hardness().unit();
        double hardness = explanation.orDefault("control.hardnessSetting", hardnessSetting,
                duty.settingMgPerL(), Message.of("assumed.softener.compensatedHardnessPlusUncertainty",
                        Text.measure(Rounding.answer(unit.fromBase(duty.settingMgPerL())), unit.symbol())));
        double capacity = explanation.orDefault("control.capacitySetting", capacitySetting, dosed.capacityGrams(),
                Message.of("assumed.softener.capacitySaltDose"));
        return Policy.nearestMeterLitres(1000 * capacity / hardness);
    }
}
