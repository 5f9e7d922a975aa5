// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.BedCapacityQuantity;
import dev.brinebook.api.quantity.SaltEfficiencyQuantity;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.EfficiencyLine;
import dev.brinebook.resin.Salt;
import dev.brinebook.source.Source;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("Results of a capacity table at a salt dose, in the ordinary water of the table.")
public record TableAtDose(
        @Property("Capacity per volume of resin.") BedCapacityQuantity capacity,
        @Basis(formula = "formula.resin.capacitySaltDose", source = "WQP-2009")
        @Property("Hardness removed per salt used.") SaltEfficiencyQuantity saltEfficiency,
        @Property(value = "Names of the limits whose salt efficiency is met.", example = "[\"productStandard\"]",
                maxItems = EfficiencyLine.COUNT)
        List<String> linesReached,
        @Property("Reliability: that of the table, or calculated beyond its published points.")
        Source.Kind kind) {

    /** The last point that the tables publish. */
    private static final double LAST_POINT_GRAMS_PER_LITRE = SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(15);

    static TableAtDose of(CapacityTable table, double sitesLeft, Salt salt, double gramsPerLitre, AnswerUnits units) {
        CapacityModel model = table.withSitesLeft(sitesLeft);
        double efficiency = model.saltEfficiencyGramsPerGram(salt, gramsPerLitre);
        // The exchange of salts may carry the highest dose past the last point by its last binary digit.
        double asSodiumChloride = Math.min(CapacityTable.MAX_SALT_DOSE_GRAMS_PER_LITRE,
                salt.asSodiumChloride(gramsPerLitre));
        return new TableAtDose(units.bedCapacity(model.capacityGramsPerLitre(salt, gramsPerLitre)),
                units.saltEfficiency(efficiency), linesReached(efficiency),
                sitesLeft < 1 ? Source.Kind.COMPUTED : table.kindAt(asSodiumChloride));
    }

    /** Names of the lines that ask for no more than this efficiency. */
    static List<String> linesReached(double saltEfficiencyGramsPerGram) {
        return EfficiencyLine.all().stream().filter(line -> line.isReachedBy(saltEfficiencyGramsPerGram))
                .map(EfficiencyLine::code).toList();
    }

    static void explain(double sitesLeft, AnswerUnits units, Explanation explanation) {
        for (CapacityTable table : CapacityTable.values()) {
            String pointer = "/points/*/" + WireNames.of(table) + "Table";
            explanation.because(pointer + "/capacity", Message.of("formula.resin.monotoneCurveThroughPoints"),
                    table.sourceKey());
            explanation.because(pointer + "/capacity", Message.of("formula.resin.aboveGrowth3532",
                    Text.of(units.saltDose(LAST_POINT_GRAMS_PER_LITRE)),
                    Text.of(units.saltDose(CapacityTable.MAX_SALT_DOSE_GRAMS_PER_LITRE))), "WQP-2009");
            if (sitesLeft < 1) {
                CapacityBasis.explainWear(pointer + "/capacity", sitesLeft, explanation);
            }
        }
    }
}
