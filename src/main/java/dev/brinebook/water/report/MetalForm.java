// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.water.WaterAnalysis.IronForm;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How iron or manganese is present, from what was seen and from filtered samples. Only what is dissolved goes on the resin.
 *
 * <p>Source: the scheme of many extension sheets, [NH-DWGB-3-8] among them; colloids by [CP-RESIN-CARE].
 */
public enum MetalForm {
    DISSOLVED(IronForm.DISSOLVED),
    PARTICLES(IronForm.VISIBLE),
    COLLOIDAL(IronForm.COLLOIDAL),
    BACTERIAL(IronForm.BACTERIAL),
    /** Bound to humic matter, with tannin. A resin does not exchange it; it behaves as a colloid. */
    ORGANIC(IronForm.COLLOIDAL),
    UNKNOWN(null);

    /** What the water looks like at the tap. */
    public enum AtTap {
        CLEAR, RED, TINTED, TEA_COLOURED, UNKNOWN
    }

    /** What becomes of it in a glass. */
    public enum AfterStanding {
        STAYS_CLEAR, RED_GRAINS, BLACK_SPECKS, SETTLES, DOES_NOT_SETTLE, FLUFF, NO_CHANGE, UNKNOWN
    }

    private final IronForm iron;

    MetalForm(IronForm iron) {
        this.iron = iron;
    }

    /** The same as a water test names it, where it is known. */
    public Optional<IronForm> iron() {
        return Optional.ofNullable(iron);
    }

    /** The form by what was seen; UNKNOWN where that does not say. */
    public static MetalForm seen(AtTap atTap, AfterStanding afterStanding, boolean slime) {
        if (slime || afterStanding == AfterStanding.FLUFF) {
            return BACTERIAL;
        }
        return switch (atTap) {
            case TEA_COLOURED -> ORGANIC;
            case CLEAR -> DISSOLVED;
            case RED -> afterStanding == AfterStanding.DOES_NOT_SETTLE ? COLLOIDAL : PARTICLES;
            case TINTED -> afterStanding == AfterStanding.SETTLES ? PARTICLES : COLLOIDAL;
            default -> switch (afterStanding) {
                case RED_GRAINS, BLACK_SPECKS, STAYS_CLEAR -> DISSOLVED;
                case SETTLES -> PARTICLES;
                case DOES_NOT_SETTLE -> COLLOIDAL;
                default -> UNKNOWN;
            };
        };
    }

    /**
     * How much of a metal is dissolved, mg/L: what passed the filter, else all of it where it was seen to be dissolved, else none where
     * it was seen not to be. Empty where neither says, or nothing was tested.
     */
    public OptionalDouble dissolvedMgPerL(OptionalDouble all, OptionalDouble filtered) {
        return filtered.isPresent() || this == UNKNOWN ? filtered
                : all.isPresent() && this != DISSOLVED ? OptionalDouble.of(0) : all;
    }

    /** The form where both samples were tested: most of it passed the filter or stayed on it; else this one. */
    public MetalForm with(OptionalDouble all, OptionalDouble filtered) {
        if (this != UNKNOWN || all.isEmpty() || filtered.isEmpty() || all.getAsDouble() == 0) {
            return this;
        }
        return filtered.getAsDouble() >= all.getAsDouble() / 2 ? DISSOLVED : PARTICLES;
    }
}
