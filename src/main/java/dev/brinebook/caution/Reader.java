// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.caution;

/** Who has to do something about a caution. */
public enum Reader {
    /** Who lives there and drinks the water. */
    CUSTOMER,
    /** Who sizes, sets, installs or services the softener, and tests the water. */
    INSTALLER,
    /** Who decides what is allowed: the plumbing code, the sewer, the health department. */
    AUTHORITY
}
