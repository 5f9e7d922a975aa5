// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.BodyForm;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Operation.QueryParameter;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.household.Country;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.text.Message;
import dev.brinebook.water.WaterAnalysis.Supply;
import dev.brinebook.water.chemistry.BalanceCriterion;
import dev.brinebook.water.chemistry.ChargeBalance;
import dev.brinebook.water.chemistry.Ion;
import dev.brinebook.water.report.CombinedHardness;
import dev.brinebook.water.report.Contradiction;
import dev.brinebook.water.report.Estimate;
import dev.brinebook.water.report.Guideline;
import dev.brinebook.water.report.Guideline.Authority;
import dev.brinebook.water.report.MetalForm;
import dev.brinebook.water.report.MetalForm.AfterStanding;
import dev.brinebook.water.report.MetalForm.AtTap;
import dev.brinebook.water.report.NextTest;
import dev.brinebook.water.report.Parameter;
import dev.brinebook.water.report.PrintedResult;
import dev.brinebook.water.report.PrintedResult.Tap;
import dev.brinebook.water.report.RatioCheck;
import dev.brinebook.water.report.RepeatInterval;
import dev.brinebook.water.report.ResinLimit;
import dev.brinebook.water.report.Sample;
import dev.brinebook.water.report.Saturation;
import dev.brinebook.water.report.SlipFinder;
import dev.brinebook.water.report.SoftenedSample;
import dev.brinebook.water.report.WaterReport;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A water report in one unit system, checked, with what it means and which test to order next. */
public final class ReadWaterReport {

    private static final BodyForm<ReportFileRequest, WaterReportAnswer> CSV = new BodyForm<>("text/csv",
            "Results as CSV (RFC 4180) in UTF-8 without byte order mark: a header with parameter and any of the other properties of a "
                    + "result, then one row per result, at most " + WaterReportRequest.MAX_RESULTS + ". Cells are written as in JSON, "
                    + "without the quotes of texts. Semicolons may stand for the commas; then numbers may have a decimal comma. "
                    + "An empty cell is a property that is not given. An error names line and column.",
            "parameter,value,unit,form,qualifier,method\r\nhardness,18.5,gpg,,,drops\r\nnitrate,5.2,mg/L,asNitrogen,,laboratory\r\n"
                    + "iron,0.05,mg/L,,below,laboratory\r\n",
            ReportFileRequest.class, List.of(
            QueryParameter.text("supply", "/supply", "Source of the water: one of " + ReportFile.names(Supply.class) + ".", false,
                    "privateWell"),
            QueryParameter.text("atTap", "/appearance/atTap", "What the water looks like at the tap: one of "
                    + ReportFile.names(AtTap.class) + ".", false, "clear"),
            QueryParameter.text("afterStanding", "/appearance/afterStanding", "What it looks like after standing in a glass for a day: "
                    + "one of " + ReportFile.names(AfterStanding.class) + ".", false, "redGrains"),
            QueryParameter.number("naturalSodium", "/naturalSodium/value", "mg/L", "Sodium of the raw water, from neighbours or an older "
                    + "report.", false, "11.5"),
            QueryParameter.text("country", "/country", "Country: one of " + ReportFile.names(Country.class) + ".", false, "germany"),
            QueryParameter.text("units", "/units", "The units of the answer: us or metric.", false, "us")),
            (text, settings) -> answer(ReportFile.read(text, settings)));

    public static final Operation<WaterReportRequest, WaterReportAnswer> OPERATION = new Operation<>("readWaterReport",
            "/v1/water-report", "Read and check a water report",
            "Choose this when somebody holds a water report: a laboratory sheet, a strip, a drop test, a meter. It takes any parameter in "
                    + "the form it is printed in (as N, as CaCO3, mmol/L, degrees, uS/cm), with detection limits and methods, of several "
                    + "reports of one water at once. It converts all to one unit system, checks charges, conductivity, dissolved solids "
                    + "and pairs that cannot both be right, names slips that would repair the report, recognises a softened sample, joins "
                    + "tests of hardness by their uncertainty, compares with public guideline values, and ranks the tests to order next "
                    + "by how likely they change the advice. Results can also be sent as text/csv. It returns the water to send to every "
                    + "other operation. If only a hardness in another unit is wanted, use convertHardness. With Accept text/html or "
                    + "application/pdf it returns a sheet to print.",
            WaterReportRequest.class, WaterReportAnswer.class, ReadWaterReport::answer, List.of(),
            List.of("well-family", "apartment")).taking(CSV).answeringIn(ReportSheet.forms(ReadWaterReport::answer));

    private ReadWaterReport() {
    }

    private static WaterReportAnswer answer(WaterReportRequest request) {
        AnswerUnits units = HomeCountry.units(request.units(), request.country());
        Explanation explanation = HomeCountry.explanation(units, request.country());
        Country country = HomeCountry.of(request.country(), explanation);
        Supply supply = explanation.resolve("/supply", request.supply(), Supply.PUBLIC_SUPPLY, "OWN-ASSUMPTION");
        MetalForm seen = (request.appearance() == null ? ReportAppearance.NONE : request.appearance()).toDomain();
        WaterReport report = request.report();
        Tap tap = report.results().stream().allMatch(result -> result.printed().sampling().tap() == Tap.SOFTENED) ? Tap.SOFTENED : Tap.RAW;
        Sample sample = report.at(tap).seen(seen);
        Optional<CombinedHardness> hardness = CombinedHardness.of(report, tap);
        Estimate naturalSodium = naturalSodium(request, units, explanation);
        SoftenedSample softened = SoftenedSample.of(sample, naturalSodium);
        Sample joined = softened.rawOf(hardness.map(tests -> sample.with(Parameter.HARDNESS, tests.estimate())).orElse(sample),
                naturalSodium, tap == Tap.SOFTENED);
        List<NextTest> next = NextTest.ranked(joined, supply, request.reasonsGiven()).stream().filter(NextTest::isWorthwhile).toList();
        WaterRequest water = ReportedWater.of(joined, seen, supply, units);
        ReportedWater.questionUnit(report, explanation);
        ReportedWater.assume(joined, units, explanation);
        ReportedWater.caution(joined, sample, supply, explanation);
        return new WaterReportAnswer(explanation.behindStops(summary(report, sample, hardness(sample, hardness, tap,
                explanation), softened, next, explanation)), water,
                hardness.map(tests -> CombinedHardnessAnswer.of(tests, units)).orElse(null),
                report.results().stream().map(ReportedValue::of).toList(), report.impossible().stream().map(ImpossibleValue::of).toList(),
                BalanceAnswer.of(sample, units), slips(sample), ratios(sample, report.isHardnessOfKits(tap)),
                Contradiction.of(sample).stream().map(pair -> new ContradictionAnswer(pair, Message.of(pair))).toList(),
                ReportNoteAnswer.of(request.lines()), SoftenedSampleAnswer.of(softened, units),
                Saturation.of(sample).map(states -> SaturationAnswer.of(states, units)).orElse(List.of()),
                MetalFormsAnswer.of(sample, seen, units), guidelines(sample, country), resin(sample),
                next.stream().map(NextTestAnswer::of).toList(), repeats(request.lines(), supply), explanation.cautions(),
                explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static Estimate naturalSodium(WaterReportRequest request, AnswerUnits units, Explanation explanation) {
        Estimate assumed = SoftenedSample.ASSUMED_NATURAL_SODIUM;
        double sodium = explanation.resolve(request.naturalSodium(), assumed.value(),
                Resolved.of("/naturalSodium", units.concentration(assumed.value())).byDefault("OWN-ASSUMPTION"));
        return request.naturalSodium() == null ? assumed : new Estimate(sodium, 0);
    }

    private static List<SlipAnswer> slips(Sample sample) {
        return isComplete(sample) ? SlipFinder.offered(sample.composition(), conductivity(sample)).stream().map(SlipAnswer::of).toList()
                : List.of();
    }

    private static boolean isComplete(Sample sample) {
        return sample.composition().missing().isEmpty();
    }

    private static OptionalDouble conductivity(Sample sample) {
        return sample.orZero(Parameter.CONDUCTIVITY) > 0 ? sample.value(Parameter.CONDUCTIVITY) : OptionalDouble.empty();
    }

    /** A hardness of kits is a test of its own, joined with the ions by its uncertainty: no sum of theirs to be checked. */
    private static List<RatioAnswer> ratios(Sample sample, boolean hardnessOfKits) {
        return Arrays.stream(RatioCheck.values()).filter(check -> check.of(sample).isPresent())
                .filter(check -> check != RatioCheck.HARDNESS || !hardnessOfKits)
                .map(check -> RatioAnswer.of(check, sample)).toList();
    }

    /** Those of the world and of the caller's country. */
    private static List<GuidelineAnswer> guidelines(Sample sample, Country country) {
        List<Authority> authorities = switch (country) {
            case UNITED_STATES -> List.of(Authority.UNITED_STATES, Authority.WHO);
            case GERMANY -> List.of(Authority.GERMANY, Authority.EUROPEAN_UNION, Authority.WHO);
            case FRANCE, EUROPEAN_UNION -> List.of(Authority.EUROPEAN_UNION, Authority.WHO);
            default -> List.of(Authority.WHO);
        };
        return Guideline.all().stream().filter(guideline -> authorities.contains(guideline.authority()))
                .filter(guideline -> sample.has(guideline.parameter()))
                .map(guideline -> GuidelineAnswer.of(guideline, sample.orZero(guideline.parameter()))).toList();
    }

    private static List<ResinLimitAnswer> resin(Sample sample) {
        return ResinLimit.all().stream().filter(limit -> sample.has(limit.parameter()))
                .map(limit -> ResinLimitAnswer.of(limit, sample.orZero(limit.parameter()))).toList();
    }

    private static List<RepeatAnswer> repeats(List<PrintedResult> lines, Supply supply) {
        return RepeatInterval.of(supply).stream().map(interval -> RepeatAnswer.of(interval, lines)).toList();
    }

    private static Message hardness(Sample sample, Optional<CombinedHardness> tests, Tap tap, Explanation explanation) {
        if (tests.isEmpty()) {
            return sample.has(Parameter.HARDNESS) ? Message.of("readWaterReport.hardnessAtLeast",
                    rounded(sample.orZero(Parameter.HARDNESS), explanation)) : Message.of("readWaterReport.noHardness");
        }
        if (tests.get().isConflict()) {
            return Message.of("readWaterReport.testsDisagree");
        }
        Message value = rounded(tests.get().estimate().value(), explanation);
        Message uncertainty = rounded(tests.get().expandedUncertaintyMgPerL(), explanation);
        return tap == Tap.SOFTENED ? Message.of("readWaterReport.hardnessBehindIs", value, uncertainty)
                : Message.of("readWaterReport.hardnessIs", value, uncertainty);
    }

    private static Message summary(WaterReport report, Sample sample, Message hardness, SoftenedSample softened,
            List<NextTest> next, Explanation explanation) {
        List<Message> sentences = new ArrayList<>();
        sentences.add(hardness);
        if (sample.composition().missing().size() < Ion.INDISPENSABLE.size()) {
            sentences.add(Message.of("readWaterReport.balance", balance(sample)));
        }
        if (!report.impossible().isEmpty()) {
            sentences.add(Message.of("readWaterReport.impossible", report.impossible().size()));
        }
        if (softened.raw().isPresent()) {
            sentences.add(Message.of("readWaterReport.softened", rounded(softened.raw().get().value(), explanation)));
        }
        if (!next.isEmpty()) {
            sentences.add(Message.of("readWaterReport.orderNext", Message.of(next.get(0).parameter())));
        }
        return Message.sentences(sentences);
    }

    private static Message rounded(double mgPerL, Explanation explanation) {
        return Text.rounded(HardnessQuantity.forReader(mgPerL, explanation));
    }

    private static String balance(Sample sample) {
        if (!isComplete(sample)) {
            return "missing";
        }
        return switch (BalanceCriterion.PRACTICE.of(ChargeBalance.of(sample.composition()))) {
            case PASSES -> "passes";
            case DOUBTFUL -> "doubtful";
            default -> "fails";
        };
    }
}
