package dev.brinebook.assessment.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.CapacityQuantity;
import dev.brinebook.quantity.api.HardnessQuantity;
import dev.brinebook.quantity.api.MassQuantity;
import dev.brinebook.quantity.api.SaltDoseQuantity;
import dev.brinebook.quantity.api.VolumeQuantity;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.water.WaterCautions;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

@About("What to set on the metered controller, with the reason for each.")
public record RecommendedSettings(
        @Property("Hardness, a whole number of gpg.") HardnessQuantity hardness,
        @Property("Capacity, rounded down to a hundred grains.") CapacityQuantity capacity,
        @Property("Water from one regeneration to the next: capacity over hardness.") VolumeQuantity meterVolume,
        @Property("Part of it that is kept back for the day after the count is read.") VolumeQuantity reserve,
        @Property("Salt dose.") SaltDoseQuantity saltDose,
        @Property("Salt of one regeneration.") MassQuantity saltPerRegeneration,
        @Property(value = "Days after which it regenerates whatever was used.", unit = "days", example = "14")
        Integer dayOverride,
        @Property(value = "Hour of the day at which it regenerates.", min = 0, max = 23, example = "2") Integer regenerationHour,
        @Property(value = "Minutes of refill, to a tenth: a whole minute more is too much salt.", unit = "minutes",
                example = "6.7") BigDecimal refillMinutes,
        @Property("Why each is as it is.") List<SettingReason> reasons) {

    private static final int DAYS_DECIMALS = 2;

    /** The settings in the units of the answer. */
    static RecommendedSettings of(DoseChoice.Option option, DoseChoice choice, Duty duty, AnswerUnits units, Explanation explanation) {
        MeterSettings settings = option.settings();
        CycleStep refill = option.dosed().cycle().step(CycleStep.Kind.REFILL);
        VolumeQuantity meter = units.volume(settings.meterLitres());
        boolean everyNight = settings.reserveLitres() >= settings.meterLitres();
        VolumeQuantity reserve = units.volume(Math.min(settings.reserveLitres(), settings.meterLitres()));
        SaltDoseQuantity dose = units.saltDose(option.dosed().saltDoseGramsPerLitre());
        HardnessQuantity hardness = new HardnessQuantity(BigDecimal.valueOf(settings.hardnessGpg()), HardnessUnit.GPG);
        CapacityQuantity capacity = units.capacity(settings.capacityGrams());
        List<SettingReason> reasons = new ArrayList<>();
        add(reasons, explanation, "hardness", Message.of("The compensated hardness {0} and the uncertainty of the test, rounded"
                + " up.", Text.of(units.hardness(duty.hardness().totalMgPerL()))), "CP-IRON-FACTORS");
        add(reasons, explanation, "capacity", Message.of("What {0} of salt restores in this bed, rounded down, so that the"
                + " meter never counts on what is not there.", Text.of(dose)), option.dosed().softener().capacity().sourceKey());
        add(reasons, explanation, "meterVolume", Message.of("{0} over {1}.", Text.of(capacity), Text.of(hardness)), "WQP-2009");
        add(reasons, explanation, "reserve", everyNight ? Message.of("No reserve keeps to the service standard, so all of it"
                + " is kept back and the softener regenerates every night: it is too small for this household.")
                : Message.of("The smallest, in steps of the controller, that keeps to the service standard: {0} of at most {1} hard"
                        + " days a year, {2} of at most {3} with more use and less capacity.", days(option.year().hardDays()),
                        Text.number(duty.standard().hardDaysPerYear()), days(duty.standard().stressedHardDays(duty.longRun(),
                        settings.policy(), duty.loadMgPerL(), option.dosed().regeneration())),
                        Text.number(duty.standard().stressedHardDaysPerYear())), "FELLER");
        add(reasons, explanation, "saltDose", choice.bound(duty).map(bound -> bound == DoseChoice.Bound.COST
                ? Message.of("With its reserve the least costly in the long run: less salt regenerates more often and wastes"
                        + " rinse water, more salt removes less hardness for its weight.")
                : Message.of("With its reserve the least costly of those that keep to all limits: {0}.", units.saying(bound)))
                .orElseGet(() -> Message.of("No dose keeps to all limits.")), "TRADE-EFFICIENT");
        add(reasons, explanation, "saltPerRegeneration", Message.of("Dose times resin volume."), "WQP-2009");
        add(reasons, explanation, "dayOverride", duty.iron()
                ? Message.of("Iron and manganese build up on the resin: by {0} days it holds what it does in {1} days at {2} mg/L.",
                        settings.overrideDays(), Policy.DEFAULT_OVERRIDE_DAYS, Text.number(WaterCautions.IRON_STAINS_MG_PER_L))
                : Message.of("Resin that stands unused fouls and packs: 14 days at the latest."),
                duty.iron() ? "WT-2010" : "CP-CYCLE");
        add(reasons, explanation, "regenerationHour", Message.of("The hours from 2 to 4 carry {0} % of a day's use, and the"
                + " water is hard while it regenerates.", new BigDecimal("1.5")), "DAIAD");
        add(reasons, explanation, "refillMinutes", Message.of("The water that dissolves the dose, {0}, at {1}.",
                Text.of(units.volume(refill.lineWaterLitres())), Text.of(units.flow(refill.flowLitresPerMinute()))),
                "SALT-INSTITUTE");
        return new RecommendedSettings(hardness, capacity, meter, reserve, dose,
                units.mass(option.dosed().saltGrams() / 1000), settings.overrideDays(), MeterSettings.REGENERATION_HOUR,
                Rounding.answer(Math.round(refill.minutes() * 10) / 10.0), List.copyOf(reasons));
    }

    private static void add(List<SettingReason> reasons, Explanation explanation, String setting, Message reason,
            String sourceKey) {
        reasons.add(new SettingReason(setting, reason));
        explanation.because("/settings/" + setting, reason, sourceKey);
    }

    private static BigDecimal days(double perYear) {
        return BigDecimal.valueOf(perYear).setScale(DAYS_DECIMALS, RoundingMode.HALF_EVEN);
    }
}
