// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.assessment;

import dev.brinebook.text.Localizable;

/**
 * What to do, in order, when a metered controller is put into service; each is one sentence.
 *
 * <p>Source: [CP-INSTALLATION].
 */
public enum CommissioningStep implements Localizable {
    TEST_WATER,
    READ_METER,
    SHUT_OFF,
    FIT,
    OPEN_BYPASS,
    CONNECT,
    SET,
    FILL_BRINE_TANK,
    REGENERATE,
    TEST_SOFTENED_WATER,
    RUN_TAP,
    HAND_OVER;

    @Override
    public String textId() {
        return Localizable.idOf("commissioningStep", this);
    }
}
