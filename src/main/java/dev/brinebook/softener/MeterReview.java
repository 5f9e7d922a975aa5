// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.regeneration.Policy;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * The hardness, capacity, reserve and override to set on a meter.
 *
 * @param found the existing softener
 * @param target how it is set right
 * @param duty its design conditions
 * @param slack how far a setting may be off without being changed
 * @param salt the salt to set, whose capacity the meter counts
 */
record MeterReview(ExistingSoftener found, SetRight target, DesignConditions duty, Slack slack, SaltReview salt) {

    Optional<Change> hardness() {
        if (found.meter().hardnessMgPerL().isEmpty() || !found.knows(Setting.HARDNESS)) {
            return Optional.empty();
        }
        double set = found.meter().hardnessMgPerL().getAsDouble();
        double needed = duty.settingMgPerL();
        return hardnessCode(set).map(code -> new Change(code, Setting.HARDNESS, set, needed, meterTimes(set / needed)));
    }

    private Optional<Finding.Code> hardnessCode(double set) {
        double least = slack.hardnessByTest() ? duty.hardness().totalMgPerL() : duty.settingMgPerL();
        if (set < least * (1 - Slack.ROUNDING_SHARE)) {
            boolean tested = set >= duty.hardness().hardnessMgPerL() - HardnessUnit.GPG.toBase(1);
            return Optional.of(tested && duty.water().ironAndManganeseMgPerL() > 0 ? Finding.Code.HARDNESS_WITHOUT_IRON
                    : Finding.Code.HARDNESS_TOO_LOW);
        }
        return set > duty.settingMgPerL() * (1 + Slack.ROUNDING_SHARE) + HardnessUnit.GPG.toBase(slack.hardnessMarginGpg())
                ? Optional.of(Finding.Code.HARDNESS_TOO_HIGH) : Optional.empty();
    }

    /** The capacity of the target; where the dose was not read it is not known either. */
    Optional<Change> capacity() {
        if (found.meter().capacityGrams().isEmpty() || !found.knows(Setting.CAPACITY) || !found.knows(Setting.SALT_DOSE)) {
            return Optional.empty();
        }
        double set = found.meter().capacityGrams().getAsDouble();
        double real = salt.capacityGrams();
        double should = targetCapacityGrams();
        double most = slack == Slack.NONE ? should : Math.max(should, real);
        if (set <= most * (1 + slack.capacityAboveShare()) && set >= should * (1 - slack.capacityBelowShare())) {
            return Optional.empty();
        }
        return Optional.of(new Change(capacityCode(set, should), Setting.CAPACITY, set, should, meterTimes(should / set)));
    }

    private Finding.Code capacityCode(double set, double should) {
        double now = found.setup().capacityGrams();
        if (set < should) {
            return set < now * (1 - Slack.ASSUMED.capacityBelowShare()) ? Finding.Code.CAPACITY_BELOW_DOSE
                    : Finding.Code.CAPACITY_FOLLOWS_DOSE;
        }
        return set > now * (1 + Slack.ASSUMED.capacityAboveShare()) ? Finding.Code.CAPACITY_ABOVE_DOSE
                : salt.doseChanges() || !found.policy().startsAtOnce() ? Finding.Code.CAPACITY_FOLLOWS_DOSE
                : Finding.Code.CAPACITY_LEAVES_NO_MARGIN;
    }

    /** What was not read of the meter is set with another dose: it would count on the capacity of the old one. */
    Optional<UnaryOperator<SoftenerSettings>> withDose() {
        if (!salt.doseChanges() || found.knows(Setting.CAPACITY) && found.knows(Setting.RESERVE)) {
            return Optional.empty();
        }
        double counted = found.meter().meterLitres() * found.meter().hardnessMgPerL().orElse(duty.settingMgPerL()) / 1000;
        UnaryOperator<SoftenerSettings> meter = found.knows(Setting.CAPACITY) ? setup -> setup
                : meterTimes(targetCapacityGrams() / counted);
        return Optional.of(setup -> found.knows(Setting.RESERVE) || targetReserve().isEmpty() ? meter.apply(setup)
                : withReserve(targetReserve().getAsDouble()).apply(meter.apply(setup)));
    }

    /** The reserve of the target, of a meter that keeps a volume back. */
    Optional<Change> reserve() {
        if (!found.knows(Setting.RESERVE) || !found.knows(Setting.SALT_DOSE) || targetReserve().isEmpty()) {
            return Optional.empty();
        }
        double set = found.policy().fixedReserveLitres().getAsDouble();
        double should = targetReserve().getAsDouble();
        if (set >= should * (1 - Slack.ROUNDING_SHARE) && set <= should * (1 + slack.reserveAboveShare())
                + (slack == Slack.NONE ? 0 : duty.reserveStepLitres(found.policy().meterVolumeLitres()))) {
            return Optional.empty();
        }
        return Optional.of(new Change(set < should ? Finding.Code.RESERVE_TOO_SMALL : Finding.Code.RESERVE_LARGER_THAN_NEEDED,
                Setting.RESERVE, set, should, withReserve(should)));
    }

    Optional<Change> override() {
        int set = found.policy().overrideDays();
        int should = target.setup().policy().overrideDays();
        if (!found.knows(Setting.DAY_OVERRIDE) || set == should) {
            return Optional.empty();
        }
        boolean none = set == Policy.NO_OVERRIDE;
        Finding.Code code = ClockReview.tooLong(none ? Policy.MAX_INTERVAL_DAYS : set, duty).orElse(none ? Finding.Code.NO_DAY_OVERRIDE
                : set < should ? Finding.Code.OVERRIDE_SHORTER_THAN_NEEDED : null);
        return code == null ? Optional.empty() : Optional.of(new Change(code, Setting.DAY_OVERRIDE, set, should, setup ->
                setup.with(setup.policy().withOverride(should))));
    }

    private double targetCapacityGrams() {
        return target.setup().policy().meterVolumeLitres() * duty.settingMgPerL() / 1000;
    }

    private OptionalDouble targetReserve() {
        return found.policy().fixedReserveLitres().isPresent() ? target.setup().policy().fixedReserveLitres() : OptionalDouble.empty();
    }

    private static UnaryOperator<SoftenerSettings> meterTimes(double factor) {
        return setup -> setup.with(setup.policy().withMeter(Policy.nearestMeterLitres(setup.policy().meterVolumeLitres() * factor)));
    }

    private static UnaryOperator<SoftenerSettings> withReserve(double litres) {
        return setup -> setup.with(setup.policy().withReserve(litres));
    }
}
