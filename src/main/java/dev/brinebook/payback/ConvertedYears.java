// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.regeneration.Policy;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.SoftenerSettings;
import java.util.Objects;

/**
 * Expected years of the existing softener and of the converted one, with the step between: the new control at the old dose.
 * The step shows what metering alone saves. In the other order, dose first, the parts would differ; the sum
 * would not.
 *
 * @param asFound a year with the present control and dose
 * @param metered a year with the new control alone
 * @param converted a year with the new control and the new dose; equal to {@code metered} where the dose stays
 */
public record ConvertedYears(SoftenerSettings.Year asFound, SoftenerSettings.Year metered, SoftenerSettings.Year converted) {

    public ConvertedYears {
        Objects.requireNonNull(asFound, "asFound");
        Objects.requireNonNull(metered, "metered");
        Objects.requireNonNull(converted, "converted");
    }

    /** The new control alone, at the present dose. */
    public static ConvertedYears of(SoftenerSettings asFound, Policy meter, DesignConditions duty) {
        SoftenerSettings.Year metered = asFound.with(meter).year(duty);
        return new ConvertedYears(asFound.year(duty), metered, metered);
    }

    /**
     * The new control and another dose.
     *
     * @param meter the new control, set for the present dose
     * @param converted the softener as converted, its control set for the new dose
     */
    public static ConvertedYears of(SoftenerSettings asFound, Policy meter, SoftenerSettings converted, DesignConditions duty) {
        return new ConvertedYears(asFound.year(duty), asFound.with(meter).year(duty), converted.year(duty));
    }

    /** What a simulated year uses. Visits are not simulated. */
    public static YearlyUse use(SoftenerSettings.Year year) {
        var totals = year.totals();
        return new YearlyUse(totals.regenerations(), totals.saltGrams() / 1000, totals.waterLitres(), 0);
    }

    /** What is saved in the first year, by the control and the dose together. */
    public YearlyCost saved(Prices prices) {
        return YearlyCost.of(use(asFound), prices).minus(YearlyCost.of(use(converted), prices));
    }

    /** Part of the first year's saving that the new control brings at the present dose. */
    public YearlyCost savedByMetering(Prices prices) {
        return YearlyCost.of(use(asFound), prices).minus(YearlyCost.of(use(metered), prices));
    }

    /** The rest of that saving, which the new dose brings once the new control is installed. */
    public YearlyCost savedByDose(Prices prices) {
        return YearlyCost.of(use(metered), prices).minus(YearlyCost.of(use(converted), prices));
    }
}
