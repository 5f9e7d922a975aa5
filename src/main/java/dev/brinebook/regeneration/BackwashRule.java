package dev.brinebook.regeneration;

import dev.brinebook.wording.Message;
import dev.brinebook.wording.Worded;

/** Which of three decides the flow of a backwash: the least of them. Source: [CP-CYCLE]. */
public enum BackwashRule implements Worded {
    /** The one fitted, or the one to choose for the bed. */
    FLOW_CONTROL("the drain line flow control", Message.of("A larger drain line flow control lifts the bed higher.")),
    /** What the drain takes, or the largest flow control within it. */
    DRAIN("what the drain takes", Message.of("A larger or shorter drain line, with a larger flow control, lifts the bed"
            + " higher.")),
    /** What the supply gives, or the largest flow control within it. */
    SUPPLY("what the supply gives", Message.of("A larger service line or a pump that gives more, with a flow control to match,"
            + " lifts the bed higher; so does a narrower tank."));

    private final String words;
    private final Message cure;

    BackwashRule(String words, Message cure) {
        this.words = words;
        this.cure = cure;
    }

    @Override
    public String words() {
        return words;
    }

    /** What gives more lift where there is too little, as a sentence. */
    public Message cure() {
        return cure;
    }
}
