// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import java.util.Objects;
import java.util.Optional;

/**
 * A capacity table for resin that has lost part of its exchange sites.
 *
 * <pre>c(d) = f · c₀(d / f)</pre>
 *
 * <p>c, c₀ capacity of the worn resin and of the table, grams as CaCO₃ per litre of resin; d salt dose, grams per litre of
 * resin; f share of the sites that is left. A litre of worn resin takes up what f litres of sound resin take up that get all of
 * its salt: fewer sites, each regenerated with more salt. A share of c₀(d) itself would take too much at low doses, where the
 * salt is what is short, not the sites.
 *
 * <p>c rises with d as the table does, stays below c₀(d) since the salt efficiency of a table falls with the dose, and keeps below
 * what salt and remaining sites can exchange as the table keeps below what its own can.
 * Validity: f above 0, to 1. Where d / f passes the last dose of the table, 20 lb/ft³, its last capacity is used: nothing is
 * published above.
 * Source: [HELFFERICH] stages in exchange equilibrium. With a share of their sites they lose the same within 5 % from 5 to
 * 20 lb/ft³ where 36 % of the sites or more are left, within 9 % where 28 % are, in water of 300 mg/L.
 * Deviation: the table is taken to be that of sound resin, though [CP-WORKING-TABLE] holds some wear that nobody has measured.
 *
 * @param table the table of sound resin
 * @param sitesLeft share of the sites that is left
 */
public record WornTable(CapacityTable table, double sitesLeft) implements CapacityModel {

    public WornTable {
        Objects.requireNonNull(table, "table");
        Guard.within(Guard.positive(sitesLeft, "sitesLeft"), 0, 1, "sitesLeft");
    }

    @Override
    public CapacityModel ofNewResin() {
        return table;
    }

    @Override
    public String sourceKey() {
        return table.sourceKey();
    }

    @Override
    public double capacityGramsPerLitre(Salt salt, double saltDoseGramsPerLitre) {
        double most = CapacityTable.maxSaltDoseGramsPerLitre(salt);
        Guard.within(saltDoseGramsPerLitre, CapacityTable.minSaltDoseGramsPerLitre(salt), most, "saltDoseGramsPerLitre");
        return sitesLeft * table.capacityGramsPerLitre(salt, Math.min(most, saltDoseGramsPerLitre / sitesLeft));
    }

    /** The lowest dose, where several give the highest capacity. */
    @Override
    public OptionalResult saltDoseGramsPerLitre(Salt salt, double capacityGramsPerLitre) {
        OptionalResult ofTable = table.saltDoseGramsPerLitre(salt, capacityGramsPerLitre / sitesLeft);
        if (!ofTable.exists()) {
            return ofTable;
        }
        double least = CapacityTable.minSaltDoseGramsPerLitre(salt);
        double dose = sitesLeft * ofTable.value();
        return Guard.isWithin(dose, least, Double.MAX_VALUE) ? OptionalResult.of(Math.max(least, dose))
                : OptionalResult.none(NoResultReason.CAPACITY_BELOW_TABLE);
    }

    @Override
    public boolean isKnownAt(Salt salt, double saltDoseGramsPerLitre) {
        return table.isKnownAt(salt, saltDoseGramsPerLitre);
    }

    @Override
    public boolean holdsEndPoint(Salt salt, double saltDoseGramsPerLitre) {
        return table.holdsEndPoint(salt, saltDoseGramsPerLitre);
    }

    @Override
    public OptionalResult leastSaltDoseGramsPerLitre(Salt salt) {
        return table.leastSaltDoseGramsPerLitre(salt);
    }

    @Override
    public Optional<ColumnResult.Settled> cycle(Salt salt, double saltDoseGramsPerLitre) {
        return table.cycle(salt, saltDoseGramsPerLitre);
    }
}
