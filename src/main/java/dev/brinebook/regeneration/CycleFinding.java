// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.text.Localizable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is wrong or unusual about a cycle on its hardware, with the sentence that says so. */
public enum CycleFinding implements Localizable {
    BACKWASH_CARRIES_RESIN_OUT(null),
    BACKWASH_ABOVE_ROOM(null),
    BACKWASH_TOO_WEAK(null),
    FREEBOARD_BELOW_GUIDE(null),
    SUPPLY_BELOW_DRAIN_FLOW(null),
    DRAIN_LINE_BELOW_DRAIN_FLOW(null),
    BRINE_TOO_FAST(null),
    BRINE_TOO_SLOW(null),
    BRINE_TOO_WEAK(null),
    BRINE_TOO_STRONG(null),
    BRINE_AND_SLOW_RINSE_SHORTER_THAN_GUIDE(Kind.BRINE_AND_SLOW_RINSE),
    BRINE_AND_SLOW_RINSE_LONGER_THAN_GUIDE(Kind.BRINE_AND_SLOW_RINSE),
    FAST_RINSE_SHORTER_THAN_GUIDE(Kind.FAST_RINSE),
    FAST_RINSE_LONGER_THAN_GUIDE(Kind.FAST_RINSE);

    /** The usual band of brining, for which no source was found. */
    public static final double ASSUMED_MIN_BRINE_BED_VOLUMES_PER_HOUR = 2;

    public static final double ASSUMED_MAX_BRINE_BED_VOLUMES_PER_HOUR = 5;
    private final Kind step;

    CycleFinding(Kind step) {
        this.step = step;
    }

    /** The step whose minutes part from their guide, where that is what is found. */
    public Optional<Kind> step() {
        return Optional.ofNullable(step);
    }

    /**
     * Everything found, in the order above.
     *
     * @param cycle the cycle
     * @param backwash what its backwash does to the bed
     */
    public static List<CycleFinding> of(Cycle cycle, BackwashEffect backwash) {
        List<CycleFinding> found = new ArrayList<>(ofBackwash(backwash, cycle.backwashFlow().rule()));
        double brine = cycle.brine().bedVolumesPerHour();
        add(found, brine > ASSUMED_MAX_BRINE_BED_VOLUMES_PER_HOUR, BRINE_TOO_FAST);
        add(found, brine < ASSUMED_MIN_BRINE_BED_VOLUMES_PER_HOUR, BRINE_TOO_SLOW);
        add(found, cycle.brine().dilutedSaltShare() < Injector.ASSUMED_MIN_DILUTED_SALT_SHARE, BRINE_TOO_WEAK);
        add(found, cycle.brine().dilutedSaltShare() > Injector.ASSUMED_MAX_DILUTED_SALT_SHARE, BRINE_TOO_STRONG);
        addGuided(found, cycle.step(Kind.BRINE_AND_SLOW_RINSE), BRINE_AND_SLOW_RINSE_SHORTER_THAN_GUIDE,
                BRINE_AND_SLOW_RINSE_LONGER_THAN_GUIDE);
        addGuided(found, cycle.step(Kind.FAST_RINSE), FAST_RINSE_SHORTER_THAN_GUIDE, FAST_RINSE_LONGER_THAN_GUIDE);
        return found;
    }

    /**
     * What is wrong with a backwash alone.
     *
     * @param backwash what it does to the bed
     * @param rule what decides its flow
     */
    public static List<CycleFinding> ofBackwash(BackwashEffect backwash, BackwashRule rule) {
        List<CycleFinding> found = new ArrayList<>();
        add(found, !backwash.expansionShare().exists(), BACKWASH_CARRIES_RESIN_OUT);
        add(found, backwash.expansionShare().exists() && backwash.losesResin(), BACKWASH_ABOVE_ROOM);
        add(found, backwash.isWeak(), BACKWASH_TOO_WEAK);
        add(found, !backwash.hasGuideFreeboard(), FREEBOARD_BELOW_GUIDE);
        add(found, rule == BackwashRule.SUPPLY, SUPPLY_BELOW_DRAIN_FLOW);
        add(found, rule == BackwashRule.DRAIN, DRAIN_LINE_BELOW_DRAIN_FLOW);
        return found;
    }

    /** The other steps cannot differ: backwashes are calculated from the guide, and the refill has no guide. */
    private static void addGuided(List<CycleFinding> found, CycleStep step, CycleFinding shorter, CycleFinding longer) {
        CycleStep.Guide guide = step.kind().guide().orElseThrow();
        add(found, step.minutes() < guide.minMinutes(), shorter);
        add(found, step.minutes() > guide.maxMinutes(), longer);
    }

    private static void add(List<CycleFinding> found, boolean applies, CycleFinding finding) {
        if (applies) {
            found.add(finding);
        }
    }

    @Override
    public String textId() {
        return Localizable.idOf("cycleFinding", this);
    }
}
