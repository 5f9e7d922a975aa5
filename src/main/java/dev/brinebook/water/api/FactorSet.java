package dev.brinebook.water.api;

import dev.brinebook.water.CompensationFactors;
import dev.brinebook.wording.Worded;

/** The named ways of counting iron and manganese as hardness. */
public enum FactorSet implements Worded {
    STOICHIOMETRIC(CompensationFactors.STOICHIOMETRIC, "the chemical equivalents of iron and manganese"),
    LIGHT(CompensationFactors.LIGHT, "2 gpg for each mg/L of iron and 2 for manganese"),
    MODERATE(CompensationFactors.MODERATE, "3 gpg for each mg/L of iron and 2 for manganese"),
    STANDARD(CompensationFactors.STANDARD, "4 gpg for each mg/L of iron and 2 for manganese"),
    CONSERVATIVE(CompensationFactors.CONSERVATIVE, "5 gpg for each mg/L of iron and 2 for manganese"),
    OWN(null, "the caller's own factors for iron and manganese");

    private final CompensationFactors factors;
    private final String meaning;

    FactorSet(CompensationFactors factors, String meaning) {
        this.factors = factors;
        this.meaning = meaning;
    }

    /** The factors of a named set; null for the caller's own. */
    CompensationFactors factors() {
        return factors;
    }

    /** What the set counts; its factors are in grains per gallon wherever water is measured, as requests give them. */
    @Override
    public String words() {
        return meaning;
    }
}
