// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.answer.softener.ControllerQuantities;
import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.MeterStart;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Step;
import dev.brinebook.water.WaterCautions;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

@SchemaDescription("Settings of the metered controller, each with its reason.")
public record RecommendedSettings(
        @From("/verdict/step")
        @Property(value = "The step of the verdict whose softener the settings are for: improve or replace where that is the verdict. "
                + "Otherwise the present bed, after convert or, where its controller is metered already, setRight.",
                example = "\"convert\"") Step step,
        @From("/hardness/compensated")
        @Property("Hardness, rounded up to a step of the controller, in its unit.") HardnessQuantity hardness,
        @From(value = {"saltDose", "/fit/resinVolume"}, unless = {"/verdict/step", "improve", "replace"})
        @Property("Capacity, rounded down to a step of the controller, in its unit.") CapacityQuantity capacity,
        @From({"capacity", "hardness"})
        @Property("Water between regenerations: capacity divided by hardness.") VolumeQuantity meterVolume,
        @From("meterVolume")
        @Property("Reserve: the part of the meter volume kept for the day after the meter decides to "
                + "regenerate.") VolumeQuantity reserve,
        @Basis(formula = "recommendedSettings.reserveWaterBetweenRegenerations", source = "FELLER")
        @From({"reserve", "meterVolume"})
        @Property(value = "The reserve as a share of the meter volume.", unit = "%", example = "15",
                optional = "when preferences.controller.reservePercentStep is not given") BigDecimal reservePercent,
        @Basis(formula = "recommendedSettings.reserveMeanUsePer", source = "FELLER")
        @From({"reserve", "/demand/dailyUse"})
        @Property(value = "The reserve in days of mean use.", unit = "days", example = "1.5",
                optional = "when preferences.controller.reserveDaysStep is not given, or nothing is used") BigDecimal reserveDays,
        @From(value = {"/tradeOff/boundBy", "/tradeOff/doses/*/saltDose", "/tradeOff/doses/*/costPerYear"},
                unless = {"/verdict/step", "improve", "replace"})
        @Property("Salt dose.") SaltDoseQuantity saltDose,
        @From(value = {"saltDose", "/fit/resinVolume"}, unless = {"/verdict/step", "improve", "replace"})
        @Property("Salt per regeneration, in steps of the controller if it takes salt by mass.") MassQuantity saltPerRegeneration,
        @Property(value = "Day override: days after which it regenerates regardless of use.", unit = "days", example = "14")
        Integer dayOverride,
        @Property(value = "Hour of regeneration.", min = 0, max = 23, example = "2") Integer regenerationHour,
        @From("/refill/minutes")
        @Property(value = "Minutes of brine refill, in tenths or in steps of the controller. Rounding up to a whole minute would give "
                + "too much salt.",
                unit = "minutes", example = "6.7") BigDecimal refillMinutes,
        @Property(value = "Reasons for the settings.", maxItems = RecommendedSettings.MOST_REASONS) List<SettingReason> reasons) {

    /** One for each number to set. */
    static final int MOST_REASONS = 16;

    /** The settings in the units of the answer; {@code step} has the softener that they are for. */
    static RecommendedSettings of(Step step, DoseChoice.Option option, DoseChoice choice, DesignConditions duty, AnswerUnits units,
            Explanation explanation) {
        MeterSettings settings = option.settings();
        CycleStep refill = option.dosed().cycle().step(CycleStep.Kind.REFILL);
        ControllerQuantities set = new ControllerQuantities(duty, units);
        VolumeQuantity meter = set.volume(settings.meterLitres());
        boolean everyNight = settings.reserveLitres() >= settings.meterLitres();
        double reserveLitres = Math.min(settings.reserveLitres(), settings.meterLitres());
        SaltDoseQuantity dose = units.saltDose(option.dosed().saltDoseGramsPerLitre());
        HardnessQuantity hardness = set.hardness(settings.hardnessMgPerL());
        CapacityQuantity capacity = set.capacity(settings.capacityGrams());
        List<SettingReason> reasons = new ArrayList<>();
        add(reasons, explanation, "hardness", Message.of("recommendedSettings.hardnessIronManganesePlus",
                Text.rounded(HardnessQuantity.forReader(duty.hardness().totalMgPerL(), explanation))), "CP-IRON-FACTORS");
        add(reasons, explanation, "capacity", Message.of("recommendedSettings.whatSaltRestoresRounded",
                Text.setting(set.salt(option.dosed().saltGrams()))), option.dosed().softener().capacity().sourceKey());
        CapacityBasis.explain("/settings/capacity", option.dosed().softener(), option.dosed().saltDoseGramsPerLitre(), units, explanation);
        add(reasons, explanation, "meterVolume", Message.of("recommendedSettings.value", Text.setting(capacity),
                Text.setting(hardness)), "WQP-2009");
        add(reasons, explanation, "reserve", everyNight ? Message.of("recommendedSettings.noReserveMeetsService")
                : settings.start() != MeterStart.DELAYED ? Message.of("recommendedSettings.noReserveAsStartsAtOnce")
                : Message.of("recommendedSettings.smallestReserveStepsController", Text.hardDays(option.year().hardDays()),
                        Text.number(duty.standard().hardDaysPerYear()), Text.hardDays(duty.standard().stressedHardDays(duty.longRun(),
                        settings.policy(), duty.loadMgPerL(), option.dosed().regeneration())),
                        Text.number(duty.standard().stressedHardDaysPerYear())), "FELLER");
        if (set.reservePercent(reserveLitres, settings.meterLitres()).isPresent()) {
            reasons.add(new SettingReason("reservePercent", Message.of("recommendedSettings.reserveWaterBetweenRegenerations")));
        }
        if (set.reserveDays(reserveLitres).isPresent()) {
            reasons.add(new SettingReason("reserveDays", Message.of("recommendedSettings.reserveMeanUsePer")));
        }
        add(reasons, explanation, "saltDose", choice.bound(duty).map(bound -> bound == DoseChoice.Bound.COST
                ? Message.of("recommendedSettings.reserveDoseCostsLeast")
                : Message.sentences(Message.of("recommendedSettings.reserveDoseCostsLeastThose"), units.saying(bound)))
                .orElseGet(() -> Message.of("recommendedSettings.noDoseMeetsAll")), "TRADE-EFFICIENT");
        add(reasons, explanation, "saltPerRegeneration", Message.of("recommendedSettings.saltDoseResinVolume", Text.rounded(dose),
                Text.rounded(units.resinVolume(option.dosed().softener().bed().resinLitres()))), "WQP-2009");
        add(reasons, explanation, "dayOverride", duty.iron()
                ? Message.of("recommendedSettings.regenerateLeastEveryDays",
                        settings.overrideDays(), Policy.DEFAULT_OVERRIDE_DAYS, Text.number(WaterCautions.IRON_STAINS_MG_PER_L))
                : duty.practice().isByCountry() ? Message.of("recommendedSettings.regenerateByRule", settings.overrideDays())
                : Message.of("recommendedSettings.regenerateLeastEvery14"),
                duty.iron() ? "WT-2010" : duty.practice().isByCountry() ? "DIN-19636-100" : "CP-CYCLE");
        add(reasons, explanation, "regenerationHour", Message.of("recommendedSettings.onlyDaysUseFalls", new BigDecimal("1.5")), "DAIAD");
        add(reasons, explanation, "refillMinutes", Message.of("recommendedSettings.doseDissolvesWaterFlows",
                Text.rounded(units.volume(refill.lineWaterLitres())), Text.rounded(units.flow(refill.flowLitresPerMinute()))),
                "SALT-INSTITUTE");
        return new RecommendedSettings(step, hardness, capacity, meter, set.volume(reserveLitres),
                set.reservePercent(reserveLitres, settings.meterLitres()).orElse(null), set.reserveDays(reserveLitres).orElse(null),
                dose, set.salt(option.dosed().saltGrams()), settings.overrideDays(), MeterSettings.REGENERATION_HOUR,
                set.refillMinutes(refill.minutes()), List.copyOf(reasons));
    }

    private static void add(List<SettingReason> reasons, Explanation explanation, String setting, Message reason,
            String sourceKey) {
        reasons.add(new SettingReason(setting, reason));
        explanation.because("/settings/" + setting, reason, sourceKey);
    }
}
