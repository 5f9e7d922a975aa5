package dev.brinebook.softener;

import dev.brinebook.guard.Figure;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Looks at what is set on a meter: hardness, capacity, reserve and override. */
final class MeterReview {

    /** Grains per gallon above the hardness needed that are still taken as a margin. */
    private static final double ASSUMED_HARDNESS_MARGIN_GPG = 2;
    /** Capacity set may miss the real one by this share without a finding: steps of the setting, and of the table. */
    private static final double ASSUMED_CAPACITY_SLACK = 0.02;
    private static final double ASSUMED_CAPACITY_WASTE = 0.10;
    private static final double ASSUMED_RESERVE_WASTE = 0.50;
    /** A setting that comes back with the six digits of an answer is still the same. */
    private static final double ROUNDING_SHARE = 1e-5;

    private MeterReview() {
    }

    static List<Finding> of(Found found, Duty duty, double realCapacityGrams) {
        List<Finding> findings = new ArrayList<>();
        found.meter().hardnessMgPerL().ifPresent(set -> hardness(set, found, duty, findings));
        found.meter().capacityGrams().ifPresent(set -> capacity(set, realCapacityGrams, found, duty,
                findings));
        if (found.policy() instanceof MeteredDelayed delayed) {
            reserve(delayed, found, duty, realCapacityGrams, findings);
        }
        override(found, duty, findings);
        return findings;
    }

    private static void hardness(double set, Found found, Duty duty, List<Finding> findings) {
        double needed = duty.settingMgPerL();
        hardnessCode(set, duty).ifPresent(code -> findings.add(new Finding(code, set, needed,
                withMeter(found, found.meter().meterLitres() * set / needed, duty))));
    }

    private static Optional<Finding.Code> hardnessCode(double set, Duty duty) {
        Finding.Code code = null;
        if (set < duty.hardness().totalMgPerL() * (1 - ROUNDING_SHARE)) {
            boolean tested = set >= duty.hardness().hardnessMgPerL() - HardnessUnit.GPG.toBase(1);
            code = tested && duty.water().ironAndManganeseMgPerL() > 0 ? Finding.Code.HARDNESS_WITHOUT_IRON
                    : Finding.Code.HARDNESS_TOO_LOW;
        } else if (set > duty.settingMgPerL() + HardnessUnit.GPG.toBase(ASSUMED_HARDNESS_MARGIN_GPG)) {
            code = Finding.Code.HARDNESS_TOO_HIGH;
        }
        return Optional.ofNullable(code);
    }

    private static void capacity(double set, double real, Found found, Duty duty, List<Finding> findings) {
        double should = duty.controller().capacityDownGrams(real);
        capacityCode(set, real, duty).ifPresent(code -> findings.add(new Finding(code, set, should,
                withMeter(found, found.meter().meterLitres() * should / set, duty))));
    }

    private static Optional<Finding.Code> capacityCode(double set, double real, Duty duty) {
        double should = duty.controller().capacityDownGrams(real) * (1 - ROUNDING_SHARE);
        return set > real * (1 + ASSUMED_CAPACITY_SLACK) ? Optional.of(Finding.Code.CAPACITY_ABOVE_DOSE)
                : set < Math.min(should, real * (1 - ASSUMED_CAPACITY_WASTE))
                ? Optional.of(Finding.Code.CAPACITY_BELOW_DOSE) : Optional.empty();
    }

    /** The reserve against the smallest that keeps to the service standard, once the other settings are as they should be. */
    private static void reserve(MeteredDelayed delayed, Found found, Duty duty, double realCapacityGrams,
            List<Finding> findings) {
        Regeneration real = found.setup().regeneration(duty.water().temperatureCelsius());
        Regeneration corrected = new Regeneration(realCapacityGrams, real.saltGrams(), real.waterLitres(), real.minutes());
        double set = delayed.reserveLitres();
        MeteredDelayed other = new MeteredDelayed(correctedMeterLitres(found, duty, realCapacityGrams), set,
                correctedOverride(found, duty));
        Figure needed = MeterSettings.smallestReserve(other, corrected, duty, set);
        double better = Math.min(Policy.MAX_METER_LITRES, needed.exists() ? needed.value() : other.meterVolumeLitres());
        Finding.Code code = set < better * (1 - ROUNDING_SHARE) && !duty.isServed(other, corrected) ? Finding.Code.RESERVE_TOO_SMALL
                : set > better * (1 + ASSUMED_RESERVE_WASTE) + duty.reserveStepLitres(other.meterVolumeLitres())
                ? Finding.Code.RESERVE_LARGER_THAN_NEEDED : null;
        if (code != null) {
            Policy policy = new MeteredDelayed(delayed.meterVolumeLitres(), better, delayed.overrideDays());
            findings.add(new Finding(code, set, better, Review.difference(found, found.setup().with(policy), duty)));
        }
    }

    /** What the meter counts once hardness and capacity are as the findings ask. */
    private static double correctedMeterLitres(Found found, Duty duty, double realCapacityGrams) {
        double litres = found.meter().meterLitres();
        var hardness = found.meter().hardnessMgPerL();
        if (hardness.isPresent() && hardnessCode(hardness.getAsDouble(), duty).isPresent()) {
            litres *= hardness.getAsDouble() / duty.settingMgPerL();
        }
        var capacity = found.meter().capacityGrams();
        if (capacity.isPresent() && capacityCode(capacity.getAsDouble(), realCapacityGrams, duty).isPresent()) {
            litres *= duty.controller().capacityDownGrams(realCapacityGrams) / capacity.getAsDouble();
        }
        return Policy.nearestMeterLitres(litres);
    }

    private static int correctedOverride(Found found, Duty duty) {
        int set = found.policy().overrideDays();
        int usual = MeterSettings.overrideDays(duty);
        return set == Policy.NO_OVERRIDE || duty.iron() && set > usual ? usual : set;
    }

    private static void override(Found found, Duty duty, List<Finding> findings) {
        int set = found.policy().overrideDays();
        boolean none = set == Policy.NO_OVERRIDE;
        if (duty.iron() && (none || set > MeterSettings.OVERRIDE_DAYS_WITH_IRON)) {
            findings.add(override(Finding.Code.OVERRIDE_TOO_LONG_FOR_IRON, found, duty,
                    MeterSettings.OVERRIDE_DAYS_WITH_IRON));
        } else if (none) {
            findings.add(override(Finding.Code.NO_DAY_OVERRIDE, found, duty, Policy.DEFAULT_OVERRIDE_DAYS));
        }
    }

    private static Finding override(Finding.Code code, Found found, Duty duty, int days) {
        return new Finding(code, found.policy().overrideDays(), days,
                Review.difference(found, found.setup().with(found.policy().withOverride(days)), duty));
    }

    private static Setup.Difference withMeter(Found found, double litres, Duty duty) {
        Policy better = found.policy().withMeter(Policy.nearestMeterLitres(litres));
        return Review.difference(found, found.setup().with(better), duty);
    }
}
