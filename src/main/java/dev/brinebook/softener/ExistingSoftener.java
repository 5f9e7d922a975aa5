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
 */
public record ExistingSoftener(SoftenerSettings setup, double statedDoseGramsPerLitre, Meter meter, Set<Setting> unknown) {

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
        unknown = Set.copyOf(unknown);
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
        return new ExistingSoftener(other, statedDoseGramsPerLitre, meter, unknown);
    }

    boolean knows(Setting setting) {
        return !unknown.contains(setting);
    }
}
