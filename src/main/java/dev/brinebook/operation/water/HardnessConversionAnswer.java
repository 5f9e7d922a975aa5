// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.answer.water.HardnessClasses;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("One hardness in every unit.")
public record HardnessConversionAnswer(
        @Property(value = "Summary in one sentence, to quote.", example = "\"18.5 gpg is 317 mg/L (17.7 °dH): very "
                + "hard water.\"") Message summary,
        @Basis(formula = "formula.water.grainsGallonsTheirExact", source = "NIST-SP811")
        @Basis(formula = "formula.water.of10MgLCao", source = "DIN38409-6")
        @Basis(formula = "formula.water.mmolLMolarMass", source = "CIAAW")
        @Property(value = "The hardness in every supported unit.", eachOf = HardnessUnit.class,
                minItems = HardnessUnit.COUNT) List<HardnessQuantity> inEveryUnit,
        @Property("Class of the hardness.") HardnessClasses classes,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
