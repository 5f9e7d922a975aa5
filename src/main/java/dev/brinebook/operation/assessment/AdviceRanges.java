// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.assessment.AdviceRange;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.payback.Prices;
import dev.brinebook.softener.BedUncertainty;
import dev.brinebook.verdict.Terms;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Effects of everything uncertain on the advice; each null where there is none.
 *
 * @param test by the hardness test
 * @param use by the use
 * @param resin by the measured resin volume
 * @param salt by the measured salt of a regeneration
 * @param saving by both measurements
 */
record AdviceRanges(AdviceRangeAnswer test, AdviceRangeAnswer use, AdviceRangeAnswer resin, AdviceRangeAnswer salt,
        SavingInterval saving) {

    static final AdviceRanges NONE = new AdviceRanges(null, null, null, null, null);

    /** By test and use, and what was measured of the softener. */
    static AdviceRanges of(AdviceRangeAnswer test, AdviceRangeAnswer use, Assessment assessment, BedUncertainty bed,
            boolean overStepBelow, Terms terms, Prices prices, Currency currency, AnswerUnits units) {
        Optional<AdviceRange> resin = AdviceRange.ofBed(assessment, bed.ofResin(), overStepBelow, prices);
        Optional<AdviceRange> salt = AdviceRange.ofBed(assessment, bed.ofSalt(), overStepBelow, prices);
        List<AdviceRange> ranges = Stream.of(resin, salt).flatMap(Optional::stream).toList();
        return new AdviceRanges(test, use, answer(resin, terms, currency, units), answer(salt, terms, currency, units),
                ranges.isEmpty() ? null : saving(AdviceRange.saving(assessment, ranges, overStepBelow, prices), currency));
    }

    private static AdviceRangeAnswer answer(Optional<AdviceRange> range, Terms terms, Currency currency, AnswerUnits units) {
        return range.map(known -> AdviceRangeAnswer.ofBed(known, terms, currency, units)).orElse(null);
    }

    private static SavingInterval saving(AdviceRange.Saving saving, Currency currency) {
        return new SavingInterval(Money.of(saving.low(), currency), Money.of(saving.high(), currency));
    }
}
