// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import dev.brinebook.answer.softener.ControllerQuantities;
import dev.brinebook.answer.softener.ControllerSetting;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.request.softener.ControlRequest;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.DoseSearch;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Joint;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The settings to enter.
 *
 * @param setup the softener with them
 * @param hardnessMgPerL hardness set on a meter
 * @param capacityGrams capacity set on a meter
 * @param duty the demand on the softener
 */
record PlannedSettings(SoftenerSettings setup, double hardnessMgPerL, double capacityGrams, DesignConditions duty) {

    private static final String CONTROL = "/settings/control";

    /** Those of the request, and where they are left out those of least cost, as an assessment advises them. */
    static PlannedSettings of(CommissioningSettingsRequest asked, SoftenerCase given, RunningCost cost, Explanation explanation) {
        DesignConditions duty = given.duty();
        Softener softener = given.found().softener();
        DoseChoice.Option option = option(asked, softener, duty, cost);
        Map<CycleStep.Kind, Double> minutes = new EnumMap<>(CycleStep.Kind.class);
        minutes.put(CycleStep.Kind.REFILL, new ControllerQuantities(duty, AnswerUnits.of(explanation)).refillMinutes(
                option.dosed().cycle().step(CycleStep.Kind.REFILL).minutes()).doubleValue());
        minutes.putAll(SoftenerCase.minutes(asked.minutes()));
        double dose = dose(asked, option.dosed(), duty);
        ControlRequest control = asked.control();
        MeterSettings meter = option.settings();
        if (control == null) {
            return new PlannedSettings(new SoftenerSettings(softener, dose, minutes, meter.policy(), MeterSettings.REGENERATION_HOUR),
                    meter.hardnessMgPerL(), meter.capacityGrams(), duty);
        }
        Policy policy = control.toPolicy(CONTROL, option.dosed(), duty, explanation);
        return new PlannedSettings(new SoftenerSettings(softener, dose, minutes, policy, control.hour(CONTROL, explanation)),
                base(control.hardnessSetting(), meter.hardnessMgPerL()),
                base(control.capacitySetting(), option.dosed().capacityGrams()), duty);
    }

    private static DoseChoice.Option option(CommissioningSettingsRequest asked, Softener softener, DesignConditions duty,
            RunningCost cost) {
        if (asked.saltDose() == null) {
            return DoseSearch.cheapest(softener, duty, cost).best();
        }
        SoftenerCase.requireCapacity(softener, asked.saltDose().inBase(), "/settings/saltDose");
        return DoseSearch.option(softener, asked.saltDose().inBase(), duty, cost);
    }

    /** The salt that refill minutes of the request dissolve, else the dose. */
    private static double dose(CommissioningSettingsRequest asked, DosedSoftener dosed, DesignConditions duty) {
        Softener softener = dosed.softener();
        if (asked.minutes() == null || asked.minutes().refill() == null) {
            return dosed.saltDoseGramsPerLitre();
        }
        double dose = CycleDesign.saltGramsOfRefill(softener.salt(), asked.minutes().refill().doubleValue()
                * softener.flows().refillOnSiteLitresPerMinute(), duty.water().temperatureCelsius()) / softener.bed().resinLitres();
        SoftenerCase.requireCapacity(softener, new SoftenerSettings(softener, dose, Map.of(), MeterSettings.of(dosed, duty).policy(),
                MeterSettings.REGENERATION_HOUR).countedDoseGramsPerLitre(), "/settings/minutes/refill");
        return dose;
    }

    private static double base(Quantity<?> given, double otherwise) {
        return given == null ? otherwise : given.inBase();
    }

    /** The regeneration as it is set. */
    Cycle cycle() {
        return setup.cycle(duty.water().temperatureCelsius());
    }

    /** A line for each setting, in the order of a common menu. */
    List<CommissioningSettingLine> lines(AnswerUnits units) {
        ControllerQuantities set = new ControllerQuantities(duty, units);
        List<CommissioningSettingLine> lines = new ArrayList<>();
        lines.add(words(ControllerSetting.TIME_OF_DAY, Message.of("sheetWords.timeNow")));
        Policy policy = setup.policy();
        if (policy.byClock()) {
            lines.add(clock(policy));
        } else {
            lines.add(line(ControllerSetting.HARDNESS, set.hardness(hardnessMgPerL), true));
            lines.add(line(ControllerSetting.CAPACITY, set.capacity(capacityGrams), true));
            lines.add(line(ControllerSetting.METER_VOLUME, set.volume(policy.meterVolumeLitres()), false));
            policy.fixedReserveLitres().ifPresent(litres -> lines.add(reserve(Math.min(litres, policy.meterVolumeLitres()), set)));
        }
        lines.add(line(ControllerSetting.SALT, set.salt(setup.softener().saltGrams(setup.saltDoseGramsPerLitre())), true));
        cycle().steps().forEach(step -> lines.add(minutes(step, set)));
        if (policy.overrideDays() != Policy.NO_OVERRIDE) {
            lines.add(days(ControllerSetting.DAY_OVERRIDE, policy.overrideDays()));
        }
        lines.add(number(ControllerSetting.HOUR, Message.of("pattern.value", LocalTime.of(setup.regenerationHour(), 0)),
                BigDecimal.valueOf(setup.regenerationHour()), null, true));
        return lines.stream().sorted(Comparator.comparing(CommissioningSettingLine::setting)).toList();
    }

    private static CommissioningSettingLine clock(Policy policy) {
        return policy.everyDays().isPresent() ? days(ControllerSetting.INTERVAL, policy.everyDays().getAsInt())
                : words(ControllerSetting.INTERVAL, Message.joined(Joint.AND, policy.weekdays().stream().sorted()
                        .map(day -> Message.of("weekday.name", WireNames.of(day))).toList()));
    }

    private CommissioningSettingLine reserve(double litres, ControllerQuantities set) {
        double meter = setup.policy().meterVolumeLitres();
        Message shows = set.reserveInWords(litres, meter);
        if (set.reservePercent(litres, meter).isPresent()) {
            return number(ControllerSetting.RESERVE, shows, set.reservePercent(litres, meter).get(), "%", true);
        }
        return set.reserveDays(litres).map(days -> number(ControllerSetting.RESERVE, shows, days, "days", true))
                .orElseGet(() -> line(ControllerSetting.RESERVE, set.volume(litres), true));
    }

    /** Whole minutes, rounded up, but for the refill, whose every minute gives salt. */
    private static CommissioningSettingLine minutes(CycleStep step, ControllerQuantities set) {
        BigDecimal minutes = step.kind() == CycleStep.Kind.REFILL ? set.refillMinutes(step.minutes())
                : BigDecimal.valueOf(step.wholeMinutes());
        return number(ControllerSetting.of(step.kind()), Message.of("settingFinding.minutes", minutes), minutes, "minutes", true);
    }

    private static CommissioningSettingLine days(ControllerSetting setting, int days) {
        return number(setting, Message.of("settingFinding.days", Text.number(days)), BigDecimal.valueOf(days), "days", true);
    }

    private static CommissioningSettingLine line(ControllerSetting setting, Quantity<?> quantity, boolean entered) {
        return number(setting, entered ? Text.setting(quantity) : Text.of(quantity), quantity.value(), quantity.unit().symbol(), entered);
    }

    private static CommissioningSettingLine words(ControllerSetting setting, Message shows) {
        return new CommissioningSettingLine(setting, Message.of(setting), shows, null, null, true);
    }

    private static CommissioningSettingLine number(ControllerSetting setting, Message shows, BigDecimal value, String unit,
            boolean entered) {
        return new CommissioningSettingLine(setting, Message.of(setting), shows, Rounding.answer(value.doubleValue()), unit, entered);
    }
}
