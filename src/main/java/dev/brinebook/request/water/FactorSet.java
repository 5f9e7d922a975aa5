package dev.brinebook.request.water;

import dev.brinebook.water.CompensationFactors;
import dev.brinebook.wording.Worded;

/** The named ways of counting iron and manganese as hardness. */
public enum FactorSet implements Worded {
    STOICHIOMETRIC(CompensationFactors.STOICHIOMETRIC, "the chemical equivalents of iron and manganese"),
    LIGHT(CompensationFactors.LIGHT, "2 gpg for each mg/L of iron and 2 for manganese",
            "34.24 mg/L for each mg/L of iron and 34.24 for manganese"),
    MODERATE(CompensationFactors.MODERATE, "3 gpg for each mg/L of iron and 2 for manganese",
            "51.35 mg/L for each mg/L of iron and 34.24 for manganese"),
    STANDARD(CompensationFactors.STANDARD, "4 gpg for each mg/L of iron and 2 for manganese",
            "68.47 mg/L for each mg/L of iron and 34.24 for manganese"),
    CONSERVATIVE(CompensationFactors.CONSERVATIVE, "5 gpg for each mg/L of iron and 2 for manganese",
            "85.59 mg/L for each mg/L of iron and 34.24 for manganese"),
    OWN(null, "the caller's own factors for iron and manganese");

    private final CompensationFactors factors;
    private final String meaning;
    private final String metricMeaning;

    FactorSet(CompensationFactors factors, String meaning) {
        this(factors, meaning, meaning);
    }

    FactorSet(CompensationFactors factors, String meaning, String metricMeaning) {
        this.factors = factors;
        this.meaning = meaning;
        this.metricMeaning = metricMeaning;
    }

    /** The factors of a named set; null for the caller's own. */
    public CompensationFactors factors() {
        return factors;
    }

    /** What the set counts. */
    @Override
    public String words() {
        return meaning;
    }

    @Override
    public String metricWords() {
        return metricMeaning;
    }
}
