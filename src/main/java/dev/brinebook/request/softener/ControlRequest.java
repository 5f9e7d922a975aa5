// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Alternatives;
import dev.brinebook.api.Discriminator;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.ClockOnWeekdays;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.MeteredImmediate;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.TwinAlternating;
import dev.brinebook.softener.AssumedReserve;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.Setting;
import dev.brinebook.text.Message;
import dev.brinebook.water.Hardness;
import dev.brinebook.water.WaterCautions;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

@SchemaDescription("Control type that starts the regenerations, and its settings.")
@Alternatives(value = {"everyDays", "weekdays"}, required = true)
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
                fallback = "the smallest that meets the service standard once hardness and capacity are set correctly; the mean use of a "
                        + "day where none does")
        ReserveRequest reserve,
        @Property(value = "Day override: days after which it regenerates regardless of use. 0 means never.", min = 0,
                max = Policy.MAX_INTERVAL_DAYS, unit = "days", example = "14",
                fallback = Policy.NO_OVERRIDE + " for a clock; " + Policy.DEFAULT_OVERRIDE_DAYS + " for a meter, or fewer, down to "
                + MeterSettings.SHORTEST_OVERRIDE_DAYS + ", if iron and manganese together exceed "
                + WaterCautions.IRON_STAINS_MG_PER_L + " mg/L")
        Integer dayOverride,
        @Property(value = "Hour of regeneration.", min = 0, max = 23, example = "2", byDefault = MeterSettings.REGENERATION_HOUR)
        Integer regenerationHour) {

    /** Where the request has the control of its softener. */
    public static final String OF_SOFTENER = "/softener/control";
    /** A thousand kilograins: above every household bed. */
    static final double MAX_CAPACITY_GRAMS = 100_000;

    /** What starts a regeneration. */
    public enum Kind {
        CLOCK, METERED_DELAYED, METERED_IMMEDIATE, TWIN_ALTERNATING
    }

    /**
     * The policy in the domain.
     *
     * @param pointer where the request has this control
     * @param dosed the softener at the dose it gets
     * @param duty the demand on it
     */
    public Policy toPolicy(String pointer, DosedSoftener dosed, DesignConditions duty, Explanation explanation) {
        int override = dayOverride(pointer + "/dayOverride", duty, explanation);
        if (kind == Kind.CLOCK) {
            return everyDays != null ? new ClockEveryDays(everyDays, override)
                    : new ClockOnWeekdays(EnumSet.copyOf(weekdays), override);
        }
        double meterLitres = meterLitres(pointer, dosed, duty, explanation);
        if (kind == Kind.METERED_IMMEDIATE) {
            return new MeteredImmediate(meterLitres, override);
        }
        if (kind == Kind.TWIN_ALTERNATING) {
            return new TwinAlternating(meterLitres, override);
        }
        if (reserve == null) {
            AssumedReserve assumed = AssumedReserve.of(meterLitres, override, dosed.regeneration(), duty);
            explanation.assume(Resolved.inWords(pointer + "/reserve", assumed.inWords()).byDefault("OWN-ASSUMPTION"));
            return new MeteredDelayed(meterLitres, assumed.litres(), override);
        }
        explanation.assume(Resolved.of(pointer + "/reserve/rule", reserve.rule()));
        if (reserve.rule() == ReserveRequest.Rule.DAY_PERCENTILE) {
            explanation.resolve(reserve.probability(), Resolved.of(pointer + "/reserve/probability", ReserveRequest.ASSUMED_PROBABILITY,
                    null).byDefault("OWN-ASSUMPTION"));
        }
        return reserve.toPolicy(meterLitres, duty, override);
    }

    /** The hour of regeneration, with its default recorded; {@code pointer} is where the request has this control. */
    public int hour(String pointer, Explanation explanation) {
        return (int) explanation.resolve(regenerationHour,
                Resolved.of(pointer + "/regenerationHour", MeterSettings.REGENERATION_HOUR, null).byDefault("CP-CYCLE"));
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

    /** Default day override of a control: [CP-CYCLE], and with iron fewer days [WT-2010]. */
    private int dayOverride(String pointer, DesignConditions duty, Explanation explanation) {
        int usual = kind == Kind.CLOCK ? Policy.NO_OVERRIDE : MeterSettings.overrideDays(duty);
        Resolved otherwise = Resolved.of(pointer, usual, "days");
        return (int) explanation.resolve(dayOverride, usual, kind != Kind.CLOCK && duty.iron()
                ? otherwise.estimated("WT-2010") : otherwise.byDefault(duty.practice().isByCountry() ? "DIN-19636-100" : "CP-CYCLE"));
    }

    /** Water that the meter counts down from, by the capacity and the hardness set on it. */
    private double meterLitres(String pointer, DosedSoftener dosed, DesignConditions duty, Explanation explanation) {
        HardnessUnit unit = duty.controller().hardness().unit();
        double hardness = explanation.resolve(hardnessSetting, duty.settingMgPerL(), Resolved.of(pointer + "/hardnessSetting",
                Rounding.answer(unit.fromBase(duty.settingMgPerL())), unit.symbol()).estimated("CP-IRON-FACTORS")
                .noting(Message.of("assumed.softener.compensatedHardnessPlusUncertainty")));
        CapacityUnit capacityUnit = duty.controller().capacityUnit();
        double capacity = explanation.resolve(capacitySetting, dosed.capacityGrams(), Resolved.of(pointer + "/capacitySetting",
                Rounding.answer(capacityUnit.fromBase(dosed.capacityGrams())), capacityUnit.symbol())
                .estimated(dosed.softener().capacity().sourceKey()).noting(Message.of("assumed.softener.capacitySaltDose")));
        return Policy.nearestMeterLitres(1000 * capacity / hardness);
    }
}
