// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.field.FieldFinding;
import dev.brinebook.field.NextMeasurement;
import dev.brinebook.request.softener.SiteRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("What readings taken at a softener say of it, with the uncertainty of each number.")
public record FieldMeasurementsAnswer(
        @Property(value = "Summary in one sentence or more, to quote.", example = "\"Each regeneration gets 9 lb of salt (8.5 to 9.5 lb). "
                + "The readings do not contradict each other.\"") Message summary,
        @Property("Flows.") FieldFlows flows,
        @Property("Salt of each regeneration.") FieldSalt salt,
        @Property("Brine.") FieldBrine brine,
        @Property("Resin.") FieldResin resin,
        @Property("Effects of the flows, and what passes by.") FieldBed bed,
        @Property(value = "What contradicts what, most important first. Empty when nothing does.", eachOf = FieldFinding.class)
        List<FieldFindingLine> findings,
        @Property(value = "Further measurements, the largest gain per minute first. Empty when enough is known.",
                eachOf = NextMeasurement.class) List<NextMeasurementLine> nextMeasurements,
        @Basis(formula = "formula.field.filledIn", source = "CP-FIELD-TESTS")
        @Property(value = "The softener for the next call: as given, with what was measured and how far it may be off.",
                optional = "if no resin volume is known")
        SoftenerRequest softener,
        @Basis(formula = "formula.field.filledIn", source = "CP-FIELD-TESTS")
        @Property(value = "The site for the next call: as given, with what was measured.", optional = "if nothing is known of it")
        SiteRequest site,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
