package dev.brinebook.operation.assessment;

import dev.brinebook.answer.softener.ControllerQuantities;
import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.SaltStep;
import dev.brinebook.water.WaterCautions;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

@About("What to set on the metered controller, with the reason for each.")
public record RecommendedSettings(
        @Property("Hardness, rounded up to a step of the controller, in its unit.") HardnessQuantity hardness,
        @Property("Capacity, rounded down to a step of the controller, in its unit.") CapacityQuantity capacity,
        @Property("Water from one regeneration to the next: capacity over hardness.") VolumeQuantity meterVolume,
        @Property("Part of it that is kept back for the day after the count is read.") VolumeQuantity reserve,
        @Property(value = "The reserve as a share of the meter volume.", unit = "%", example = "15",
                optional = "when preferences.controller.reservePercentStep is not given") BigDecimal reservePercent,
        @Property(value = "The reserve in days of mean use.", unit = "days", example = "1.5",
                optional = "when preferences.controller.reserveDaysStep is not given, or nothing is used") BigDecimal reserveDays,
        @Property("Salt dose.") SaltDoseQuantity saltDose,
        @Property("Salt of one regeneration; in steps of the controller where it takes salt by mass.") MassQuantity saltPerRegeneration,
        @Property(value = "Days after which it regenerates whatever was used.", unit = "days", example = "14")
        Integer dayOverride,
        @Property(value = "Hour of the day at which it regenerates.", min = 0, max = 23, example = "2") Integer regenerationHour,
        @Property(value = "Minutes of refill, to a tenth or in steps of the controller: a whole minute more is too much salt.",
                unit = "minutes", example = "6.7") BigDecimal refillMinutes,
        @Property("Why each is as it is.") List<SettingReason> reasons) {

    private static final int DAYS_DECIMALS = 2;

    /** The settings in the units of the answer. */
    static RecommendedSettings of(DoseChoice.Option option, DoseChoice choice, Duty duty, AnswerUnits units, Explanation explanation) {
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
        add(reasons, explanation, "hardness", Message.of("The compensated hardness {0} and the uncertainty of the test, rounded"
                + " up.", Text.of(units.hardness(duty.hardness().totalMgPerL()))), "CP-IRON-FACTORS");
        add(reasons, explanation, "capacity", Message.of("What {0} of salt restores in this bed, rounded down, so that the"
                + " meter never counts on what is not there.", set.saltInWords(option.dosed().saltDoseGramsPerLitre(),
                        option.dosed().softener())), option.dosed().softener().capacity().sourceKey());
        add(reasons, explanation, "meterVolume", Message.of("{0} over {1}.", ControllerQuantities.inWords(capacity),
                ControllerQuantities.inWords(hardness)), "WQP-2009");
        add(reasons, explanation, "reserve", everyNight ? Message.of("No reserve keeps to the service standard, so all of it"
                + " is kept back and the softener regenerates every night: it is too small for this household.")
                : Message.of("The smallest, in steps of the controller, that keeps to the service standard: {0} of at most {1} hard"
                        + " days a year, {2} of at most {3} with more use and less capacity.", days(option.year().hardDays()),
                        Text.number(duty.standard().hardDaysPerYear()), days(duty.standard().stressedHardDays(duty.longRun(),
                        settings.policy(), duty.loadMgPerL(), option.dosed().regeneration())),
                        Text.number(duty.standard().stressedHardDaysPerYear())), "FELLER");
        if (set.reservePercent(reserveLitres, settings.meterLitres()).isPresent()) {
            add(reasons, explanation, "reservePercent", Message.of("The reserve over what the meter counts."), "FELLER");
        }
        if (set.reserveDays(reserveLitres).isPresent()) {
            add(reasons, explanation, "reserveDays", Message.of("The reserve over the use of a mean day."), "FELLER");
        }
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
        return new RecommendedSettings(hardness, capacity, meter, set.volume(reserveLitres),
                set.reservePercent(reserveLitres, settings.meterLitres()).orElse(null), set.reserveDays(reserveLitres).orElse(null),
                dose, set.salt(option.dosed().saltGrams()), settings.overrideDays(), MeterSettings.REGENERATION_HOUR,
                refillMinutes(refill.minutes(), duty), List.copyOf(reasons));
    }

    /** To a tenth of a minute; a controller that takes the salt by minutes gets the steps that the salt was chosen in. */
    private static BigDecimal refillMinutes(double minutes, Duty duty) {
        return Rounding.answer(duty.controller().saltStep() instanceof SaltStep.RefillMinutes refill
                ? refill.stepMinutes() * Math.round(minutes / refill.stepMinutes()) : Math.round(minutes * 10) / 10.0);
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
