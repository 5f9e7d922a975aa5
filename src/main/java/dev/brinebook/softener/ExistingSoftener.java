// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.regeneration.Policy;
import java.util.EnumSet;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The existing softener and its controller.
 *
 * @param setup everything set on it, with the salt that really reaches the bed
 * @param statedDoseGramsPerLitre the dose that is meant, where the refill shows another; else the same
 * @param meter what is set on its meter, as far as it is one
 * @param unknown settings that were not read: the setup holds a value in their place, which is neither right nor wrong
 * @param tank how much of the size of its tank is known: the setup holds the smallest standard tank in place of what is not
 */
public record ExistingSoftener(SoftenerSettings setup, double statedDoseGramsPerLitre, Meter meter, Set<Setting> unknown,
        TankSize tank) {

    /**
     * Settings of a meter, as far as given.
     *
     * @param hardnessMgPerL hardness set
     * @param capacityGrams capacity set
     * @param meterLitres volume that follows from both
     */
    public record Meter(OptionalDouble hardnessMgPerL, OptionalDouble capacityGrams, double meterLitres) {
    }

    public ExistingSoftener {
        Objects.requireNonNull(setup, "setup");
        Objects.requireNonNull(tank, "tank");
        unknown = Set.copyOf(unknown);
    }

    /** A softener in a tank of known size. */
    public ExistingSoftener(SoftenerSettings setup, double statedDoseGramsPerLitre, Meter meter, Set<Setting> unknown) {
        this(setup, statedDoseGramsPerLitre, meter, unknown, TankSize.KNOWN);
    }

    /** A softener of which all was read but what its meter lacks. */
    public ExistingSoftener(SoftenerSettings setup, double statedDoseGramsPerLitre, Meter meter) {
        this(setup, statedDoseGramsPerLitre, meter, notRead(setup.policy(), meter));
    }

    private static Set<Setting> notRead(Policy policy, Meter meter) {
        Set<Setting> unknown = EnumSet.noneOf(Setting.class);
        if (!policy.byClock() && meter.hardnessMgPerL().isEmpty()) {
            unknown.add(Setting.HARDNESS);
        }
        if (!policy.byClock() && meter.capacityGrams().isEmpty()) {
            unknown.add(Setting.CAPACITY);
        }
        return unknown;
    }

    public Policy policy() {
        return setup.policy();
    }

    /** The same readings on another setup. */
    ExistingSoftener with(SoftenerSettings other) {
        return new ExistingSoftener(other, statedDoseGramsPerLitre, meter, unknown, tank);
    }

    /** The same where the bed holds {@code resinFactor} times the resin and a regeneration gets {@code saltFactor} times the salt. */
    ExistingSoftener withBed(double resinFactor, double saltFactor) {
        Softener softener = setup.softener().withResin(resinFactor * setup.softener().bed().resinLitres());
        double doseFactor = saltFactor / resinFactor;
        return new ExistingSoftener(setup.with(softener).withDose(doseFactor * setup.saltDoseGramsPerLitre(), setup.minutes()),
                doseFactor * statedDoseGramsPerLitre, meter, unknown, tank);
    }

    /** What is known of it beside its resin. */
    public Fit.Datasheet datasheet() {
        return new Fit.Datasheet(OptionalDouble.empty(), OptionalDouble.empty(), tank);
    }

    /** How it fits, at the dose it gets. */
    public Fit fit(DesignConditions duty) {
        DosedSoftener dosed = new DosedSoftener(setup.softener(), setup.countedDoseGramsPerLitre(),
                setup.cycle(duty.water().temperatureCelsius()));
        return Fit.of(dosed, duty, !policy().byClock(), datasheet(), setup.year(duty).totals());
    }

    boolean knows(Setting setting) {
        return !unknown.contains(setting);
    }
}
