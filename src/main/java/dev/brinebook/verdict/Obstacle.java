package dev.brinebook.verdict;

import dev.brinebook.wording.Worded;

/** Why a step is not taken, or what it lacks, said as a sentence without capital and full stop. */
public enum Obstacle implements Worded {
    HARD_WATER("the water is hard: without softening scale and the need for more soap stay"),
    NOTHING_TO_TREAT("nothing in the water test has to be treated first"),
    NO_SOFTENER("no softener is there"),
    METERED_ALREADY("the controller is metered already"),
    TWIN_ALREADY("it has two tanks already"),
    LARGE_ENOUGH("the softener is large enough"),
    NONE_LARGE_ENOUGH("no standard size is large enough"),
    RUNS_HARD("hard water passes on more days than the service standard allows"),
    LEAKS("more hardness leaks through than the end point allows");

    private final String words;

    Obstacle(String words) {
        this.words = words;
    }

    @Override
    public String words() {
        return words;
    }
}
