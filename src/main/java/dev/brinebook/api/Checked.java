// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

/** A request record whose properties depend on each other. */
public interface Checked {

    /**
     * Reports what is wrong between properties. Runs on records that may have errors of their own, so every property may be null.
     */
    void check(Violations at);
}
