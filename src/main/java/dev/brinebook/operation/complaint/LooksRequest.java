// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.complaint;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.complaint.Sign;
import java.util.EnumMap;
import java.util.Map;

@SchemaDescription("What was looked at. Omit what nobody looked at.")
public record LooksRequest(
        @Property(value = "The salt is as high as before the last regenerations.", fallback = LooksRequest.NOT_SEEN, example = "true")
        Boolean saltLevelUnchanged,
        @Property(value = "A rod meets a crust with room below it, mush, or no salt.", fallback = LooksRequest.NOT_SEEN, example = "false")
        Boolean saltBridge,
        @Property(value = "The clock is right and the count of regenerations rises.", fallback = LooksRequest.NOT_SEEN, example = "true")
        Boolean controllerRight,
        @Property(value = "The display counts while a tap runs.", fallback = LooksRequest.NOT_SEEN, example = "true")
        Boolean displayCounts,
        @Property(value = "The bypass is not shut.", fallback = LooksRequest.NOT_SEEN, example = "false") Boolean bypassNotShut,
        @Property(value = "Water runs to the drain in service.", fallback = LooksRequest.NOT_SEEN, example = "false")
        Boolean drainRunsInService,
        @Property(value = "Bubbles come through the brine line in the draw.", fallback = LooksRequest.NOT_SEEN, example = "false")
        Boolean airBubbles,
        @Property(value = "It draws well with the drain hose off at the valve.", fallback = LooksRequest.NOT_SEEN, example = "true")
        Boolean suctionWithoutDrainHose,
        @Property(value = "The brine level rises overnight in service.", fallback = LooksRequest.NOT_SEEN, example = "false")
        Boolean levelRisesInService,
        @Property(value = "Acid on a pinch of resin turns yellow.", fallback = LooksRequest.NOT_SEEN, example = "true")
        Boolean acidTurnsYellow,
        @Property(value = "The bed is clearly lower than it should be, by a lamp or by tapping the tank.",
                fallback = LooksRequest.NOT_SEEN, example = "false") Boolean bedLow,
        @Property(value = "Resin beads lie in screens of taps.", fallback = LooksRequest.NOT_SEEN, example = "false")
        Boolean beadsInScreen,
        @Property(value = "The drain line ends without an air gap.", fallback = LooksRequest.NOT_SEEN, example = "false")
        Boolean airGapMissing,
        @Property(value = "Cold raw water has the same colour, smell or taste.", fallback = LooksRequest.NOT_SEEN, example = "false")
        Boolean rawTheSame,
        @Property(value = "The house meter moves with all taps shut.", fallback = LooksRequest.NOT_SEEN, example = "false")
        Boolean meterMovesAtNight,
        @Property(value = "Hot water stays hard after the heater was emptied three times.", fallback = LooksRequest.NOT_SEEN,
                example = "false") Boolean hotStaysHard,
        @Property(value = "The outlet is soft after a regeneration started by hand.", fallback = LooksRequest.NOT_SEEN,
                example = "true") Boolean softAfterHandStart,
        @Property(value = "It came slowly, over months.", fallback = LooksRequest.NOT_SEEN, example = "true") Boolean cameSlowly) {

    static final String NOT_SEEN = "not looked at";

    /** What was answered. */
    Map<Sign, Boolean> answered() {
        Map<Sign, Boolean> answered = new EnumMap<>(Sign.class);
        put(answered, Sign.SALT_LEVEL_UNCHANGED, saltLevelUnchanged);
        put(answered, Sign.SALT_BRIDGE, saltBridge);
        put(answered, Sign.CONTROLLER_RIGHT, controllerRight);
        put(answered, Sign.DISPLAY_COUNTS, displayCounts);
        put(answered, Sign.BYPASS_NOT_SHUT, bypassNotShut);
        put(answered, Sign.DRAIN_RUNS_IN_SERVICE, drainRunsInService);
        put(answered, Sign.AIR_BUBBLES, airBubbles);
        put(answered, Sign.SUCTION_WITHOUT_DRAIN_HOSE, suctionWithoutDrainHose);
        put(answered, Sign.LEVEL_RISES_IN_SERVICE, levelRisesInService);
        put(answered, Sign.ACID_TURNS_YELLOW, acidTurnsYellow);
        put(answered, Sign.BED_LOW, bedLow);
        put(answered, Sign.BEADS_IN_SCREEN, beadsInScreen);
        put(answered, Sign.AIR_GAP_MISSING, airGapMissing);
        put(answered, Sign.RAW_THE_SAME, rawTheSame);
        put(answered, Sign.METER_MOVES_AT_NIGHT, meterMovesAtNight);
        put(answered, Sign.HOT_STAYS_HARD, hotStaysHard);
        put(answered, Sign.SOFT_AFTER_HAND_START, softAfterHandStart);
        put(answered, Sign.CAME_SLOWLY, cameSlowly);
        return answered;
    }

    private static void put(Map<Sign, Boolean> answered, Sign sign, Boolean yes) {
        if (yes != null) {
            answered.put(sign, yes);
        }
    }
}
