// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import java.util.function.UnaryOperator;

/**
 * A setting found and the one to set, before it is known what changing it brings.
 *
 * @param code why
 * @param setting which setting
 * @param set what is set
 * @param shouldBe what to set
 * @param apply sets it
 */
record Change(Finding.Code code, Setting setting, double set, double shouldBe, UnaryOperator<SoftenerSettings> apply) {

    /** Another reason for a change that is made already. */
    Change also(Finding.Code other) {
        return new Change(other, setting, set, shouldBe, UnaryOperator.identity());
    }

    boolean protects() {
        return code.purpose() == Finding.Purpose.PROTECT;
    }
}
