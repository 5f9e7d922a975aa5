package dev.brinebook.quantity;

/** Units of exchange capacity and of the hardness load that uses it. Base: grams as calcium carbonate. */
public enum CapacityUnit implements Unit {
    GRAM("g", "g", 1, "grams as CaCO3"),
    GRAIN("gr", "[gr]", Exact.GRAIN_MILLIGRAMS / 1000, "grains as CaCO3"),
    KILOGRAIN("kgr", "", Exact.GRAIN_MILLIGRAMS, "thousands of grains as CaCO3"),
    EQUIVALENT("eq", "eq", AtomicWeights.CALCIUM_CARBONATE / 2, "equivalents");

    private final Definition definition;

    CapacityUnit(String symbol, String ucum, double factor, String meaning) {
        this.definition = new Definition(symbol, ucum, factor, meaning);
    }

    @Override
    public Definition definition() {
        return definition;
    }
}
