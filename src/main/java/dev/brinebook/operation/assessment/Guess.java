// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.text.Localizable;

/** What a value rests on that nobody measured. */
enum Guess implements Localizable {
    IRON("/water/iron"), USE("/household/usePerPerson"), REFILL_FLOW("/softener/flows/refill"), DRAIN_FLOW("/softener/flows/drain"),
    BRINE_FLOW("/softener/flows/brineDraw");

    private final String pointer;

    Guess(String pointer) {
        this.pointer = pointer;
    }

    /** This, if it was a guess in the case; else null. */
    Guess in(SheetCase sheet) {
        return sheet.guessed(pointer) ? this : null;
    }

    @Override
    public String textId() {
        return Localizable.idOf("guess", this);
    }
}
