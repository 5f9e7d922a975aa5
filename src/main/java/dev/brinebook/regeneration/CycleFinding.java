package dev.brinebook.regeneration;

import dev.brinebook.regeneration.CycleStep.Kind;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.wording.Worded;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is wrong or unusual about a cycle on its hardware, with the sentence that says so. */
public enum CycleFinding implements Worded {
    BACKWASH_CARRIES_RESIN_OUT("The drain flow is faster than the resin falls: the backwash carries it out of the tank."),
    BACKWASH_ABOVE_ROOM("The backwash lifts the resin higher than the tank has room: resin leaves with the water."),
    BACKWASH_TOO_WEAK("The backwash lifts the bed by less than 30 %, too little to clean all of it: fines and iron stay in"
            + " it."),
    FREEBOARD_BELOW_GUIDE("The room above the bed is less than half its depth, the least that the guide asks for."),
    SUPPLY_BELOW_DRAIN_FLOW("The supply gives less than the drain line flow control lets through, or than the bed asks for:"
            + " the backwash gets only what the supply gives."),
    DRAIN_LINE_BELOW_DRAIN_FLOW("The drain line takes less than the drain line flow control lets through, or than the bed asks"
            + " for: the flow control must not let more through than the drain takes."),
    BRINE_TOO_FAST("The brine passes faster than 5 bed volumes an hour: it has too little time with the resin."),
    BRINE_TOO_SLOW("The brine passes slower than 2 bed volumes an hour: the regeneration takes long."),
    BRINE_TOO_WEAK("The injector adds so much water that the brine is weaker than 8 %: it restores less capacity."),
    BRINE_TOO_STRONG("The injector adds so little water that the brine is stronger than 12 %: little of it passes, and"
            + " not all of the bed meets it for long."),
    BRINE_AND_SLOW_RINSE_SHORTER_THAN_GUIDE("Brine and slow rinse are done in less time than the guide has: the salt is"
            + " little, or the injector fast for the resin.", Kind.BRINE_AND_SLOW_RINSE),
    BRINE_AND_SLOW_RINSE_LONGER_THAN_GUIDE("Brine and slow rinse take more time than the guide has: the salt is much, or"
            + " the injector slow for the resin.", Kind.BRINE_AND_SLOW_RINSE),
    FAST_RINSE_SHORTER_THAN_GUIDE("The fast rinse is done in less time than the guide has: its flow passes three bed"
            + " volumes of so little resin sooner, and the volume clears the brine, not the time.", Kind.FAST_RINSE),
    FAST_RINSE_LONGER_THAN_GUIDE("The fast rinse takes more time than the guide has: its flow is slow for so much resin,"
            + " and three bed volumes have to pass.", Kind.FAST_RINSE);

    /** The usual band of brining, of which no source is at hand. */
    public static final double ASSUMED_MIN_BRINE_BED_VOLUMES_PER_HOUR = 2;
    public static final double ASSUMED_MAX_BRINE_BED_VOLUMES_PER_HOUR = 5;

    private final String sentence;
    private final Kind step;

    CycleFinding(String sentence) {
        this(sentence, null);
    }

    CycleFinding(String sentence, Kind step) {
        this.sentence = sentence;
        this.step = step;
    }

    @Override
    public String words() {
        return sentence;
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

    /** The other steps cannot part: backwashes are worked out as the guide has them, and the refill has none. */
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
}
