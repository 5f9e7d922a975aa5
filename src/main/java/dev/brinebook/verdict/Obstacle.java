package dev.brinebook.verdict;

import dev.brinebook.wording.Worded;

/** Why a step is not taken, or what it lacks, said as a sentence without capital and full stop. */
public enum Obstacle implements Worded {
    HARD_WATER("the water is hard: without softening scale and the need for more soap stay"),
    NOTHING_TO_TREAT("nothing in the water test has to be treated first"),
    NO_SOFTENER("no softener is there"),
    METERED_ALREADY("the controller is metered already"),
    TWIN_ALREADY("it has two tanks already"),
    LARGE_ENOUGH("the water can be kept soft without, and no goods were named to compare"),
    NONE_LARGE_ENOUGH("no standard size is large enough"),
    RUNS_HARD("hard water passes on more days than the service standard allows"),
    LEAKS("more hardness leaks through than the end point allows"),
    NO_LARGER_SIZE("no standard size is larger"),
    NO_FULL_WATER_TEST("sodium or dissolved solids must be tested to work it out"),
    COUNTER_CURRENT_ALREADY("the brine is drawn against the direction of service already"),
    SOME_HARDNESS_STAYS("the water keeps some hardness"),
    COLD_WATER_STAYS_HARD("cold water stays hard"),
    DOES_NOT_FIT("its size does not suit the flows, or its tank the backwash");

    private final String words;

    Obstacle(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
