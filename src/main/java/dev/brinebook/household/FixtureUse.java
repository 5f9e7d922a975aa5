// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

/** Where a fixture is installed. */
public enum FixtureUse {
    /** In a home. */
    PRIVATE,
    /** Where anyone may use it. */
    PUBLIC
}
