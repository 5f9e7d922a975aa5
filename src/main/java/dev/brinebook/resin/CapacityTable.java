// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.quantity.Exact;
import dev.brinebook.source.Source;
import java.util.Optional;

/**
 * Hardness that a litre of resin takes up between two regenerations, by the salt dose that regenerates it.
 *
 * <p>Both tables hold for standard gel cation resin (8 % crosslinked, 1.9 to 2.0 eq/L) regenerated in the direction of
 * service. The published points are joined by a {@link MonotoneCubic}. Below the first lies the physical point "no
 * salt, no capacity"; above 15 lb/ft³ the tables go on with the growth of 35/32 to 20 lb/ft³ that [WQP-2009] prints.
 * What lies between a published point and one of these is computed, and {@link #kindAt} says so.
 *
 * <p>The two disagree by 7 to 10 %, since one is resin in use and the other new resin in a laboratory:
 * <ul>
 * <li>WORKING: 27 kgr/ft³ at 10 lb/ft³. The default, because what a household gets is what it has to live on.
 * <li>NEW_RESIN: 29 kgr/ft³ at the same dose.
 * </ul>
 */
public enum CapacityTable implements CapacityModel {
    /** Source: [CP-WORKING-TABLE]; [IL-604] counts no more than its 20 kgr/ft³ at 0.3 lb per kilograin. */
    WORKING("/resin/capacity-working.csv", "CP-WORKING-TABLE"),
    /** Source: [RESIN-DATA-SHEET]. */
    NEW_RESIN("/resin/capacity-new-resin.csv", "RESIN-DATA-SHEET");

    /** 3 lb/ft³. Below it, the tables say nothing. */
    public static final double MIN_SALT_DOSE_GRAMS_PER_LITRE =
            3 * (1000 * Exact.POUND_KILOGRAMS / Exact.CUBIC_FOOT_LITRES);
    /** 20 lb/ft³. Above it, more salt is lost to the drain. */
    public static final double MAX_SALT_DOSE_GRAMS_PER_LITRE =
            20 * (1000 * Exact.POUND_KILOGRAMS / Exact.CUBIC_FOOT_LITRES);

    private final CapacityKnots knots;
    private final MonotoneCubic curve;
    private final String sourceKey;

    CapacityTable(String resource, String sourceKey) {
        this.knots = CapacityKnots.read(resource);
        this.curve = knots.curve();
        this.sourceKey = sourceKey;
    }

    /** Key of the source of the published points. */
    @Override
    public String sourceKey() {
        return sourceKey;
    }

    /** This table for resin with a share of its sites left, by age or by a test. */
    public CapacityModel withSitesLeft(double share) {
        return share == 1 ? this : new WornTable(this, share);
    }

    @Override
    public CapacityModel ofNewResin() {
        return this;
    }

    /** How far the capacity at a dose of sodium chloride can be trusted: as its source, or as computed beyond it. */
    public Source.Kind kindAt(double saltDoseGramsPerLitre) {
        return knots.kindAt(Guard.within(saltDoseGramsPerLitre, MIN_SALT_DOSE_GRAMS_PER_LITRE,
                MAX_SALT_DOSE_GRAMS_PER_LITRE, "saltDoseGramsPerLitre"));
    }

    /** Capacity for a dose of sodium chloride, grams as CaCO₃ per litre of resin. */
    public double capacityGramsPerLitre(double saltDoseGramsPerLitre) {
        return capacityGramsPerLitre(Salt.SODIUM_CHLORIDE, saltDoseGramsPerLitre);
    }

    /**
     * Capacity for a dose of a salt, grams as CaCO₃ per litre of resin: that of the sodium chloride with as many
     * equivalents, and never more than the salt can exchange.
     *
     * @throws IllegalArgumentException when the dose lies outside {@link #minSaltDoseGramsPerLitre} to
     *     {@link #maxSaltDoseGramsPerLitre}
     */
    @Override
    public double capacityGramsPerLitre(Salt salt, double saltDoseGramsPerLitre) {
        Guard.within(saltDoseGramsPerLitre, minSaltDoseGramsPerLitre(salt), maxSaltDoseGramsPerLitre(salt),
                "saltDoseGramsPerLitre");
        // The exchange of salts may carry the highest dose past the last knot by its last binary digit.
        double capacity = curve.value(
                Math.min(MAX_SALT_DOSE_GRAMS_PER_LITRE, salt.asSodiumChloride(saltDoseGramsPerLitre)));
        return Guard.within(capacity, 0, saltDoseGramsPerLitre * salt.ceilingGramsPerGram(), "capacity");
    }

    /** Dose of sodium chloride for a capacity, or the reason why none in the range gives just that much. */
    public OptionalResult saltDoseGramsPerLitre(double capacityGramsPerLitre) {
        return saltDoseGramsPerLitre(Salt.SODIUM_CHLORIDE, capacityGramsPerLitre);
    }

    /** Dose of a salt for a capacity, or the reason why none in the range gives just that much. */
    @Override
    public OptionalResult saltDoseGramsPerLitre(Salt salt, double capacityGramsPerLitre) {
        Guard.positive(capacityGramsPerLitre, "capacityGramsPerLitre");
        if (capacityGramsPerLitre > curve.value(MAX_SALT_DOSE_GRAMS_PER_LITRE)) {
            return OptionalResult.none(NoResultReason.CAPACITY_ABOVE_TABLE);
        }
        if (capacityGramsPerLitre < curve.value(MIN_SALT_DOSE_GRAMS_PER_LITRE)) {
            return OptionalResult.none(NoResultReason.CAPACITY_BELOW_TABLE);
        }
        // The root's last binary digits may fall below the lowest dose.
        double dose = Math.max(MIN_SALT_DOSE_GRAMS_PER_LITRE, curve.inverse(capacityGramsPerLitre));
        return OptionalResult.of(salt.fromSodiumChloride(dose));
    }

    @Override
    public boolean isKnownAt(Salt salt, double saltDoseGramsPerLitre) {
        return Guard.isWithin(saltDoseGramsPerLitre, minSaltDoseGramsPerLitre(salt), maxSaltDoseGramsPerLitre(salt));
    }

    @Override
    public boolean holdsEndPoint(Salt salt, double saltDoseGramsPerLitre) {
        return isKnownAt(salt, saltDoseGramsPerLitre);
    }

    @Override
    public OptionalResult leastSaltDoseGramsPerLitre(Salt salt) {
        return OptionalResult.of(minSaltDoseGramsPerLitre(salt));
    }

    @Override
    public Optional<ColumnResult.Settled> cycle(Salt salt, double saltDoseGramsPerLitre) {
        return Optional.empty();
    }

    /** The lowest dose of a salt that the tables cover: 3 lb/ft³ of sodium chloride or as many equivalents. */
    public static double minSaltDoseGramsPerLitre(Salt salt) {
        return salt.fromSodiumChloride(MIN_SALT_DOSE_GRAMS_PER_LITRE);
    }

    /** The highest dose of a salt that the tables cover: 20 lb/ft³ of sodium chloride or as many equivalents. */
    public static double maxSaltDoseGramsPerLitre(Salt salt) {
        return salt.fromSodiumChloride(MAX_SALT_DOSE_GRAMS_PER_LITRE);
    }
}
