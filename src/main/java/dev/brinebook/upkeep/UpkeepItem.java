// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.upkeep;

import dev.brinebook.text.Localizable;
import dev.brinebook.text.Message;

/** A task that keeps a softener going, with what makes it due whatever the date is. Most frequent first. */
public enum UpkeepItem implements Localizable {
    SALT_LEVEL("CP-UPKEEP", Message.of("upkeepTrigger.saltLevel")),
    RESIN_CLEANER("OWN-ASSUMPTION", Message.of("upkeepTrigger.resinCleaner")),
    SEDIMENT_FILTER("CP-UPKEEP", Message.of("upkeepTrigger.sedimentFilter")),
    BACTERIA_TEST("CDC-WELL-TESTS", Message.of("upkeepTrigger.bacteriaTest")),
    HARDNESS_TEST("CP-UPKEEP", Message.of("upkeepTrigger.hardnessTest")),
    SALT_BOOKS("CP-UPKEEP", Message.of("upkeepTrigger.saltBooks")),
    FLOWS("CP-UPKEEP", Message.of("upkeepTrigger.flows")),
    INJECTOR("CP-UPKEEP", Message.of("upkeepTrigger.injector")),
    METER("CP-UPKEEP", Message.of("upkeepTrigger.meter")),
    BRINE_TANK("CP-UPKEEP", Message.of("upkeepTrigger.brineTank")),
    CLOCK_BATTERY("CP-UPKEEP", Message.of("upkeepTrigger.clockBattery")),
    SEALS("CP-UPKEEP", Message.of("upkeepTrigger.seals")),
    RESIN("UFC-3-240-13FN", Message.of("upkeepTrigger.resin")),
    /** Never by date. */
    SANITISE("CP-UPKEEP", Message.of("upkeepTrigger.sanitise"));

    private final String sourceKey;
    private final Message trigger;

    UpkeepItem(String sourceKey, Message trigger) {
        this.sourceKey = sourceKey;
        this.trigger = trigger;
    }

    /** Key of the source of its interval and its trigger. */
    public String sourceKey() {
        return sourceKey;
    }

    /** What makes it due before its date, in a sentence. */
    public Message trigger() {
        return trigger;
    }

    @Override
    public String textId() {
        return Localizable.idOf("upkeepItem", this);
    }
}
