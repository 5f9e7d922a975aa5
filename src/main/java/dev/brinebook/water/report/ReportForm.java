// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.text.ListedOnce;

/** As what a value is printed: nitrate as itself or as the nitrogen in it, calcium as itself or as the carbonate that it would make. */
@ListedOnce("As what a result is printed.")
public enum ReportForm {
    ITSELF,
    AS_NITROGEN,
    AS_SULFUR,
    AS_PHOSPHORUS,
    AS_SILICON,
    AS_CALCIUM_CARBONATE,
    AS_CALCIUM_OXIDE,
    AS_BICARBONATE,
    AS_SODIUM_CHLORIDE,
    /** The acid that a titration took: KS 4.3, the m value; to pH 8.2 KS 8.2, the p value. */
    ACID_CAPACITY,
    /** Of a conductivity that is not corrected to 25 °C. */
    AT_20_CELSIUS,
    /** Dissolved solids of a pocket meter, which are conductivity times 0.5, 0.64 or 0.7. */
    METER_SCALE_500,
    METER_SCALE_640,
    METER_SCALE_700
}
