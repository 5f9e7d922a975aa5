package dev.brinebook.guard;

import dev.brinebook.wording.Worded;

/** The closed list of reasons why a question has no number for an answer, each with the sentence that says so. */
public enum NoAnswer implements Worded {
    NOTHING_SAVED("nothing is saved, so the cost is never paid back"),
    NOT_WITHIN_HORIZON("the savings do not add up to the cost within the years looked at"),
    NO_INVESTMENT("nothing is invested, so there is no return to measure"),
    NO_SIGN_CHANGE("the cash flows never change sign, so no rate of return exists"),
    NO_RATE_IN_RANGE("no rate of return lies between -99.99 % and 1,000,000 %"),
    NEVER_REGENERATES("the softener does not regenerate in the time looked at"),
    ONE_REGENERATION("the softener regenerates only once in the time looked at, so there is no interval to measure"),
    NEVER_BREAKS_EVEN("nowhere in the range looked at is it worth just as much"),
    HARD_EVERY_NIGHT("even a softener that regenerates every night has more hard days than asked for"),
    RESIN_CARRIED_OUT("the upflow is so fast that it carries the resin out of the tank"),
    CAPACITY_ABOVE_TABLE("no salt dose up to 20 lb/ft3 gives so much capacity",
            "no salt dose up to 320 g/L gives so much capacity"),
    CAPACITY_BELOW_TABLE("even the least salt dose that may be used gives more capacity"),
    NOTHING_TO_SOFTEN("the water is less than twice as hard as the end point, so there is hardly anything to soften"),
    EFFICIENCY_NOT_REACHED("no salt dose that may be used reaches this salt efficiency"),
    END_POINT_NOT_HELD("at this salt dose more hardness leaks through than the end point allows, from the first litre on"),
    NO_DOSE_HOLDS_END_POINT("at every salt dose more hardness leaks through than the end point allows, from the first litre on"),
    CYCLES_DO_NOT_SETTLE("one cycle does not become like the next, so there is no lasting capacity to state"),
    NO_FIXTURE_UNITS("the code's table has no fixture units for one of the fixtures in its use: give its fixtureUnits"),
    BELOW_DEMAND_CURVE("the fixture units are below the demand curve, which begins at 1 for flush tanks and at 5 for"
            + " flushometer valves: so few fixtures are counted with their own flows"),
    ABOVE_DEMAND_CURVE("the fixture units are above 5000, where the demand curve ends"),
    NO_BUSY_PROBABILITY("how often one of the fixtures runs was not measured, as it was only for common fixtures of homes:"
            + " give its busyProbability and flow"),
    TOO_MANY_FIXTURES("there are more than 200 fixtures: too many to try every combination, and the fit is near"),
    NO_DESIGN_FLOW("the standard's table has no design flow for one of the fixtures: give its designFlow"),
    BELOW_DESIGN_FLOWS("the design flows sum to less than 3.17 gpm, where the formula begins: all may run at once",
            "the design flows sum to less than 0.2 L/s, where the formula begins: all may run at once"),
    ABOVE_DESIGN_FLOWS("the design flows sum to more than 7,925 gpm, where the formula ends",
            "the design flows sum to more than 500 L/s, where the formula ends"),
    DAYS_DO_NOT_DIFFER("the days do not differ, so there is no scatter to fit"),
    NOBODY_THERE("no day has any use, so there is nothing to fit"),
    NO_SUCH_DAY_FOLLOWED("no such day is followed by a day that is known");

    private final String sentence;
    private final String metricSentence;

    NoAnswer(String sentence) {
        this(sentence, sentence);
    }

    NoAnswer(String sentence, String metricSentence) {
        this.sentence = sentence;
        this.metricSentence = metricSentence;
    }

    /** One plain sentence, without a full stop, for the person asking. */
    @Override
    public String words() {
        return sentence;
    }

    @Override
    public String metricWords() {
        return metricSentence;
    }
}
