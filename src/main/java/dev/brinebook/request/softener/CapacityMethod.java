// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

/** How the capacity of a resin is counted. */
public enum CapacityMethod {
    /** The table of the trade, which holds for one ordinary water and co-current brine. */
    TABLE,
    /** The column in exchange equilibrium, for the water at hand. */
    COLUMN
}
