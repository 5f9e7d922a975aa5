// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.text.Message;
import dev.brinebook.water.report.Contradiction;
import dev.brinebook.water.report.Parameter;
import dev.brinebook.water.report.RatioCheck;
import dev.brinebook.water.report.ReportNote;
import java.util.List;

@SchemaDescription("A water report in one unit system, whether it can be true, what it means, and which test to order next.")
public record WaterReportAnswer(
        @Property(value = "Summary in one sentence, to quote.", example = "\"The hardness is 15 gpg, give or take 1 gpg.\"")
        Message summary,
        @Basis(formula = "formula.waterReport.toSendOn", source = "GUM")
        @Property(value = "The water, to send to other operations as it is.", optional = "without a hardness") WaterRequest water,
        @Basis(formula = "formula.waterReport.weightedMean", source = "BIRGE-1932")
        @Property(value = "The hardness of all tests.", optional = "without a hardness") CombinedHardnessAnswer hardness,
        @Basis(formula = "formula.waterReport.formsByWeights", source = "CIAAW")
        @Property(value = "Every result in one unit and form.", maxItems = WaterReportRequest.MAX_RESULTS) List<ReportedValue> results,
        @Basis(formula = "formula.waterReport.usualRanges", source = "HEM-2254")
        @Property(value = "Results that no water has, left out of the calculation.", maxItems = WaterReportRequest.MAX_RESULTS)
        List<ImpossibleValue> impossible,
        @Basis(formula = "formula.waterReport.chargeBalance", source = "SM1030E")
        @Property("Cations against anions.") BalanceAnswer balance,
        @Basis(formula = "formula.waterReport.slipUndone", source = "OWN-ASSUMPTION")
        @Property(value = "Slips that would repair the report, the best fit first.", maxItems = 2) List<SlipAnswer> slips,
        @Basis(formula = "formula.waterReport.ratios", source = "SM1030E")
        @Property(value = "Measured against calculated numbers.", eachOf = RatioCheck.class) List<RatioAnswer> ratios,
        @Property(value = "Results that cannot both be right.", eachOf = Contradiction.class) List<ContradictionAnswer> contradictions,
        @Property(value = "What the sampling, or another report, says of results.", eachOf = ReportNote.class) List<ReportNoteAnswer> notes,
        @Basis(formula = "formula.waterReport.rawFromSodium", source = "CIAAW")
        @Property("Whether the sample was softened already.") SoftenedSampleAnswer sample,
        @Basis(formula = "formula.waterReport.saturation", source = "PLUMMER-BUSENBERG-1982")
        @Property(value = "What the water does to lime, as it is, heated, softened and neutralised. Empty without pH, alkalinity and "
                + "calcium.", eachOf = SaturationAnswer.State.class) List<SaturationAnswer> saturation,
        @Basis(formula = "formula.waterReport.metalForms", source = "NH-DWGB-3-8")
        @Property("How iron and manganese are present.") MetalFormsAnswer metals,
        @Basis(formula = "formula.waterReport.guidelines", source = "WHO-GDWQ")
        @Property(value = "Results beside the values of public authorities.", maxItems = MAX_GUIDELINES) List<GuidelineAnswer> guidelines,
        @Basis(formula = "formula.waterReport.resinLimits", source = "CP-RESIN-CARE")
        @Property(value = "Results beside what resin tolerates.", maxItems = MAX_GUIDELINES) List<ResinLimitAnswer> resin,
        @Basis(formula = "formula.waterReport.nextTests", source = "OWN-ASSUMPTION")
        @Property(value = "Tests to order, the one that most likely changes the advice first.", maxItems = MAX_GUIDELINES)
        List<NextTestAnswer> nextTests,
        @Basis(formula = "formula.waterReport.repeats", source = "CDC-WELL-TESTS")
        @Property(value = "How often each test is repeated. Empty unless the supply is a private well.", eachOf = Parameter.class)
        List<RepeatAnswer> repeats,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {

    static final int MAX_GUIDELINES = 100;
}
