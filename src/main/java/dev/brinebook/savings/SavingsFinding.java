// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.savings;

import dev.brinebook.text.Localizable;
import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;

/** What a verdict on a saving should not be believed without. Most important first. */
public enum SavingsFinding implements Localizable {
    /** Less salt made the water harder. */
    HARDER_AT_OUTLET,
    /** Count and dose contradict the bags. */
    SALT_CONTRADICTS,
    /** The water was not read in both periods. */
    WATER_NOT_READ,
    /** The outlet was not tested in both periods. */
    OUTLET_NOT_TESTED,
    /** The period after begins in the first days after the change. */
    STARTED_EARLY,
    /** The use moved. */
    USE_MOVED,
    /** The raw water became harder or softer. */
    RAW_HARDNESS_MOVED,
    /** So few regenerations that the interval is a little narrow. */
    FEW_REGENERATIONS;

    /** Days after a change that are not read. */
    public static final int ASSUMED_FIRST_DAYS = 14;
    /** Regenerations of a period below which there are few. */
    public static final int ASSUMED_FEW = 5;
    /** Change of use or hardness that is named, as a share. */
    public static final double ASSUMED_MOVED = 0.1;
    /** Rise of the hardness at the outlet that is more than a drop of a test: 1 gpg as CaCO3. */
    public static final double ASSUMED_HARDER_MG_PER_L = 17.12;

    private final String textId = Localizable.idOf("savingsFinding", this);

    @Override
    public String textId() {
        return textId;
    }

    /** Whether there is no verdict with it. */
    public boolean forbidsVerdict() {
        return this == HARDER_AT_OUTLET || this == SALT_CONTRADICTS;
    }

    /**
     * What is found in two periods.
     *
     * @param outletBefore hardness at the outlet, mg/L as CaCO3
     * @param outletAfter the same after the change
     * @param daysSinceChange from the change to the first day of the period after it
     */
    public static Set<SavingsFinding> of(SavingsPeriod before, SavingsPeriod after, boolean saltAgrees, OptionalDouble outletBefore,
            OptionalDouble outletAfter, OptionalLong daysSinceChange) {
        Set<SavingsFinding> found = EnumSet.noneOf(SavingsFinding.class);
        boolean tested = outletBefore.isPresent() && outletAfter.isPresent();
        add(found, HARDER_AT_OUTLET, tested && outletAfter.getAsDouble() - outletBefore.getAsDouble() > ASSUMED_HARDER_MG_PER_L);
        add(found, SALT_CONTRADICTS, !saltAgrees);
        add(found, WATER_NOT_READ, (before.startedBy().byWater() || after.startedBy().byWater())
                && (before.litresPerDay().isEmpty() || after.litresPerDay().isEmpty()));
        add(found, OUTLET_NOT_TESTED, !tested);
        add(found, STARTED_EARLY, daysSinceChange.isPresent() && daysSinceChange.getAsLong() < ASSUMED_FIRST_DAYS);
        add(found, USE_MOVED, moved(before.litresPerDay(), after.litresPerDay()));
        add(found, RAW_HARDNESS_MOVED, moved(before.hardness(), after.hardness()));
        add(found, FEW_REGENERATIONS, Math.min(before.count(), after.count()) < ASSUMED_FEW);
        return found;
    }

    private static boolean moved(OptionalDouble before, OptionalDouble after) {
        return before.isPresent() && after.isPresent()
                && Math.abs(after.getAsDouble() / before.getAsDouble() - 1) > ASSUMED_MOVED;
    }

    private static void add(Set<SavingsFinding> found, SavingsFinding finding, boolean holds) {
        if (holds) {
            found.add(finding);
        }
    }
}
