// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.household.Country;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SaltDoseRange;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.resin.Brining;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.Salt;
import dev.brinebook.text.Message;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

@SchemaDescription("A water, to chart the capacity at each salt dose.")
public record ResinCapacityRequest(
        @Property(value = "The water test. Sodium or dissolved solids determine the hardness leakage at low doses.", required = true)
        WaterRequest water,
        @Property(value = "The salt.", defaultCode = "sodiumChloride", example = "\"sodiumChloride\"") Salt salt,
        @Property(value = "Direction of the brine through the bed. The tables always assume co-current beds.",
                defaultCode = "coCurrent", example = "\"coCurrent\"") Brining.Direction brineDirection,
        @Property("The resin, if it is not new gel resin.") ColumnResinRequest resin,
        @Property(value = "The salt doses to chart: 3 to 20 lb/ft3 of sodium chloride, or the same equivalents of potassium "
                + "chloride.", min = CapacityTable.MIN_SALT_DOSE_GRAMS_PER_LITRE,
                max = SoftenerRequest.MAX_ANY_DOSE_GRAMS_PER_LITRE, unit = "g/L", minItems = 1,
                maxItems = ResinCapacityRequest.MAX_DOSES,
                fallback = "every whole lb/ft3 from " + ResinCapacityRequest.LOWEST_POUNDS_PER_CUBIC_FOOT + " to "
                + ResinCapacityRequest.HIGHEST_POUNDS_PER_CUBIC_FOOT + ", or the same equivalents of potassium chloride")
        List<SaltDoseQuantity> saltDoses,
        @Property("Preferences. Only capacityTable, resinEfficiency and endPoint are used. Table and "
                + "column are both shown for any capacityMethod.") PreferencesRequest preferences,
        @Property(value = HomeCountry.DESCRIPTION, defaultCode = "unitedStates", example = "\"germany\"") Country country,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units)
        implements Checked {

    static final int MAX_DOSES = 40;
    static final int LOWEST_POUNDS_PER_CUBIC_FOOT = 3;
    static final int HIGHEST_POUNDS_PER_CUBIC_FOOT = 20;

    @Override
    public void check(Violations at) {
        for (int i = 0; saltDoses != null && !at.at("salt").here() && i < saltDoses.size(); i++) {
            SaltDoseRange.check(saltDoses.get(i), saltOrDefault(), at.at("saltDoses").at(i));
        }
    }

    Salt saltOrDefault() {
        return salt == null ? Salt.SODIUM_CHLORIDE : salt;
    }

    /** The doses in the order given, g/L, recorded in {@code explanation}. */
    List<Double> dosesGramsPerLitre(Explanation explanation) {
        if (saltDoses != null) {
            explanation.assume(listed(saltDoses));
            return saltDoses.stream().map(SaltDoseQuantity::inBase).toList();
        }
        List<Double> usual = IntStream.rangeClosed(LOWEST_POUNDS_PER_CUBIC_FOOT, HIGHEST_POUNDS_PER_CUBIC_FOOT)
                .mapToObj(pounds -> saltOrDefault().fromSodiumChloride(SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(pounds)))
                .toList();
        Resolved listed = listed(usual.stream().map(AnswerUnits.of(explanation)::saltDose).toList()).byDefault("CP-WORKING-TABLE");
        explanation.assume(saltOrDefault() == Salt.SODIUM_CHLORIDE ? listed
                : listed.noting(Message.of("assumed.resin.equivalentsSodiumChlorideDoses")));
        return usual;
    }

    private static Resolved listed(List<SaltDoseQuantity> doses) {
        return Resolved.ofCode("/saltDoses", doses.stream().map(dose -> dose.value().toPlainString() + " " + dose.unit().symbol())
                .collect(Collectors.joining(", ")));
    }
}
