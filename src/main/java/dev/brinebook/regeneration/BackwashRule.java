// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.text.Message;

/** Which of three decides the flow of a backwash: the least of them. Source: [CP-CYCLE]. */
public enum BackwashRule {
    /** The one fitted, or the one to choose for the bed. */
    FLOW_CONTROL(Message.of("backwashRule.largerDrainLineFlow")),
    /** What the drain takes, or the largest flow control within it. */
    DRAIN(Message.of("backwashRule.largerOrShorterDrain")),
    /** What the supply gives, or the largest flow control within it. */
    SUPPLY(Message.of("backwashRule.largerServiceLineOr"));

    private final Message cure;

    BackwashRule(Message cure) {
        this.cure = cure;
    }

    /** What gives more lift where there is too little, as a sentence. */
    public Message cure() {
        return cure;
    }
}
