// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.resin.TotalCapacity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * A setting that was not read, and its effect: a year at either end of its plausible range, all else unchanged.
 *
 * @param setting the setting to read off
 * @param low the lower end
 * @param high the higher end
 */
public record Question(Setting setting, End low, End high) {

    /** Salt that changes by a smaller share, and hard days by fewer, make no question. */
    private static final double ASSUMED_SALT_SHARE = 0.10;
    private static final double ASSUMED_HARD_DAYS = 1;
    /** The rule of thumb for a reserve, mean days; the least is none. */
    private static final double ASSUMED_MOST_RESERVE_DAYS = 2.2;

    /**
     * One end.
     *
     * @param value what may be set, in the base unit of the setting's measure
     * @param year expected totals of a year with it
     */
    public record End(double value, SoftenerSettings.Year year) {
    }

    /** The questions that matter: salt of a year by more than a tenth, or hard days by more than one. */
    public static List<Question> of(ExistingSoftener found, DesignConditions duty) {
        List<Question> questions = new ArrayList<>();
        for (Setting setting : Setting.values()) {
            if (!found.knows(setting)) {
                ask(setting, found, duty).filter(Question::matters).ifPresent(questions::add);
            }
        }
        return List.copyOf(questions);
    }

    private boolean matters() {
        double low = this.low.year().totals().saltGrams();
        double high = this.high.year().totals().saltGrams();
        return Math.abs(high - low) > ASSUMED_SALT_SHARE * Math.max(low, high)
                || Math.abs(this.high.year().totals().hardDays() - this.low.year().totals().hardDays()) > ASSUMED_HARD_DAYS;
    }

    private static Optional<Question> ask(Setting setting, ExistingSoftener found, DesignConditions duty) {
        SoftenerSettings setup = found.setup();
        Policy policy = setup.policy();
        return switch (setting) {
            case SALT_DOSE -> doses(setup.softener(), duty).map(doses -> between(setting, doses[0], doses[1], duty, dose ->
                    withDose(found, dose)));
            case DAY_OVERRIDE -> policy.byClock() ? Optional.empty()
                    : Optional.of(between(setting, MeterSettings.SHORTEST_OVERRIDE_DAYS, Policy.DEFAULT_OVERRIDE_DAYS, duty,
                            days -> setup.with(policy.withOverride((int) days))));
            case HARDNESS -> policy.byClock() ? Optional.empty()
                    : Optional.of(between(setting, leastHardness(duty), duty.settingMgPerL(), duty,
                            hardness -> meterTimes(setup, duty.settingMgPerL() / hardness)));
            case CAPACITY -> policy.byClock() ? Optional.empty() : capacity(found, duty);
            case RESERVE -> policy.fixedReserveLitres().isPresent() ? Optional.of(between(setting, 0,
                    Math.min(policy.meterVolumeLitres(), ASSUMED_MOST_RESERVE_DAYS * duty.meanLitres()), duty,
                    litres -> setup.with(policy.withReserve(litres)))) : Optional.empty();
            default -> Optional.empty();
        };
    }

    /** From what the lowest recommended dose restores to what the nameplate says. */
    private static Optional<Question> capacity(ExistingSoftener found, DesignConditions duty) {
        SoftenerSettings setup = found.setup();
        double hardness = found.meter().hardnessMgPerL().orElse(duty.settingMgPerL());
        double nameplate = TotalCapacity.NAMEPLATE_GRAMS_PER_LITRE * setup.softener().bed().resinLitres();
        return doses(setup.softener(), duty).map(doses -> setup.withDose(doses[0], Map.of()).capacityGrams()).map(low ->
                between(Setting.CAPACITY, Math.min(low, nameplate), Math.max(low, nameplate), duty, grams -> setup.with(
                        setup.policy().withMeter(Policy.nearestMeterLitres(1000 * grams / hardness)))));
    }

    /** A meter set to the hardness of a test, where iron, manganese and the uncertainty of the test are left out. */
    private static double leastHardness(DesignConditions duty) {
        return Math.min(duty.settingMgPerL(), Math.max(HardnessUnit.GPG.toBase(1), duty.hardness().hardnessMgPerL()));
    }

    /** The lowest and the highest dose that are usual and have a capacity. */
    private static Optional<double[]> doses(Softener softener, DesignConditions duty) {
        double[] known = duty.dosesGramsPerLitre(softener).stream().mapToDouble(Double::doubleValue)
                .filter(dose -> softener.capacity().isKnownAt(softener.salt(), dose)).toArray();
        return known.length == 0 ? Optional.empty() : Optional.of(new double[] {known[0], known[known.length - 1]});
    }

    private static Question between(Setting setting, double low, double high, DesignConditions duty, DoubleFunction<SoftenerSettings> set) {
        return new Question(setting, new End(low, set.apply(low).year(duty)), new End(high, set.apply(high).year(duty)));
    }

    /** Another dose; a meter whose capacity was not read either counts on what the dose restores. */
    private static SoftenerSettings withDose(ExistingSoftener found, double gramsPerLitre) {
        SoftenerSettings setup = found.setup();
        Map<CycleStep.Kind, Double> minutes = new HashMap<>(setup.minutes());
        minutes.remove(CycleStep.Kind.REFILL);
        SoftenerSettings other = setup.withDose(gramsPerLitre, minutes);
        return setup.policy().byClock() || found.knows(Setting.CAPACITY) ? other
                : meterTimes(other, other.capacityGrams() / setup.capacityGrams());
    }

    private static SoftenerSettings meterTimes(SoftenerSettings setup, double factor) {
        return setup.with(setup.policy().withMeter(Policy.nearestMeterLitres(factor * setup.policy().meterVolumeLitres())));
    }
}
