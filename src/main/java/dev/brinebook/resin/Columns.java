// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

/** Source of column results: calculated, or cached from an equal case. */
@FunctionalInterface
public interface Columns {

    /** Calculates every column, without a cache. */
    Columns CALCULATED = ColumnCase::result;

    /** The result of {@link ColumnCase#result}. */
    ColumnResult of(ColumnCase column);
}
