package dev.brinebook.payback;

import dev.brinebook.regeneration.Policy;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.Setup;
import java.util.Objects;

/**
 * A softener as found and as converted, as is to be expected of a year each, with the step between: the new control at the old dose.
 * The step tells what metering alone saves. Taken in the other order, dose first, the parts would be others; the sum
 * would not.
 *
 * @param asFound a year as it stands
 * @param metered a year with the new control alone
 * @param converted a year with the new control and the new dose; equal to {@code metered} where the dose stays
 */
public record ConvertedYears(Setup.Year asFound, Setup.Year metered, Setup.Year converted) {

    public ConvertedYears {
        Objects.requireNonNull(asFound, "asFound");
        Objects.requireNonNull(metered, "metered");
        Objects.requireNonNull(converted, "converted");
    }

    /** The new control alone, at the dose as found. */
    public static ConvertedYears of(Setup asFound, Policy meter, Duty duty) {
        Setup.Year metered = asFound.with(meter).year(duty);
        return new ConvertedYears(asFound.year(duty), metered, metered);
    }

    /**
     * The new control and another dose.
     *
     * @param meter the new control, set for the dose as found
     * @param converted the softener as converted, its control set for the new dose
     */
    public static ConvertedYears of(Setup asFound, Policy meter, Setup converted, Duty duty) {
        return new ConvertedYears(asFound.year(duty), asFound.with(meter).year(duty), converted.year(duty));
    }

    /** What a simulated year uses. Visits are not simulated. */
    public static YearlyUse use(Setup.Year year) {
        var totals = year.totals();
        return new YearlyUse(totals.regenerations(), totals.saltGrams() / 1000, totals.waterLitres(), 0);
    }

    /** What is saved in the first year, by the control and the dose together. */
    public YearlyCost saved(Prices prices) {
        return YearlyCost.of(use(asFound), prices).minus(YearlyCost.of(use(converted), prices));
    }

    /** Part of the first year's saving that the new control brings at the dose as found. */
    public YearlyCost savedByMetering(Prices prices) {
        return YearlyCost.of(use(asFound), prices).minus(YearlyCost.of(use(metered), prices));
    }

    /** The rest of it, which the new dose brings once the new control stands. */
    public YearlyCost savedByDose(Prices prices) {
        return YearlyCost.of(use(metered), prices).minus(YearlyCost.of(use(converted), prices));
    }
}
