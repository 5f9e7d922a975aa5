// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

/** Source of columns and capacity curves: calculated, or cached from an equal case. */
public interface Columns {

    /** Calculates each, without a cache. */
    Columns CALCULATED = new Columns() {
        @Override
        public ColumnResult of(ColumnCase column) {
            return column.result();
        }

        @Override
        public CapacityCurve of(CurveCase curve) {
            return curve.curve();
        }
    };

    /** The result of {@link ColumnCase#result}. */
    ColumnResult of(ColumnCase column);

    /** The result of {@link CurveCase#curve}. */
    CapacityCurve of(CurveCase curve);
}
