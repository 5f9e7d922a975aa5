// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.source.Source;
import dev.brinebook.source.Source.Kind;
import dev.brinebook.source.Table;
import java.util.List;
import java.util.Locale;

/** The points of a capacity table, read from its data file and checked against what the salt can exchange. */
record CapacityKnots(double[] saltDoseGramsPerLitre, double[] capacityGramsPerLitre, List<Kind> kinds) {

    static CapacityKnots read(String resource) {
        List<String[]> rows = Table.read(resource, ',', 3);
        CapacityKnots knots = new CapacityKnots(new double[rows.size()], new double[rows.size()],
                rows.stream().map(row -> kind(row[2])).toList());
        for (int i = 0; i < rows.size(); i++) {
            double dose = SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(Double.parseDouble(rows.get(i)[0]));
            double capacity = CapacityUnit.KILOGRAIN.toBase(Double.parseDouble(rows.get(i)[1]))
                    / Exact.CUBIC_FOOT_LITRES;
            knots.saltDoseGramsPerLitre[i] = dose;
            knots.capacityGramsPerLitre[i] = Guard.within(capacity, 0,
                    dose * Salt.SODIUM_CHLORIDE.ceilingGramsPerGram(), "capacity in " + resource);
        }
        return knots;
    }

    MonotoneCubic curve() {
        return MonotoneCubic.through(saltDoseGramsPerLitre, capacityGramsPerLitre);
    }

    /** How far a dose can be trusted: a published stretch lies between two published points. */
    Kind kindAt(double doseGramsPerLitre) {
        int above = 1;
        while (doseGramsPerLitre > saltDoseGramsPerLitre[above]) {
            above++;
        }
        Kind upper = kinds.get(above);
        boolean onKnot = doseGramsPerLitre == saltDoseGramsPerLitre[above];
        return onKnot || kinds.get(above - 1) != Kind.DEFINITION ? upper : Kind.COMPUTED;
    }

    private static Kind kind(String cell) {
        return Source.Kind.valueOf(cell.replaceAll("([A-Z])", "_$1").toUpperCase(Locale.ROOT));
    }
}
