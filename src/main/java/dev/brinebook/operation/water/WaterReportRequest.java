// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.household.Country;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterAnalysis.Supply;
import dev.brinebook.water.report.PrintedResult;
import dev.brinebook.water.report.TestReason;
import dev.brinebook.water.report.WaterReport;
import java.util.List;
import java.util.Set;

@SchemaDescription("A water report, or several of the same water, as they are printed.")
public record WaterReportRequest(
        @Property(value = "The results, of all reports together.", required = true, minItems = 1, maxItems = WaterReportRequest.MAX_RESULTS)
        List<ReportResultRequest> results,
        @Property(value = "Source of the water.", defaultCode = "publicSupply", example = "\"privateWell\"") Supply supply,
        @Property(value = "What the water looks like.", fallback = "not seen") ReportAppearance appearance,
        @Property(value = "Sodium of the raw water, from neighbours or an older report. It rebuilds the hardness of a softened sample.",
                min = 0, max = WaterAnalysis.MAX_SODIUM_MG_PER_L, unit = "mg/L", fallback = "11.5 mg/L, known to 5 mg/L")
        ConcentrationQuantity naturalSodium,
        @Property(value = "Why the water is tested: what is wrong with it, and who drinks it. The tests that answer it come first.",
                minItems = 1, maxItems = WaterReportRequest.MAX_REASONS, fallback = "none", example = "[\"redStains\", \"infant\"]")
        List<TestReason> reasons,
        @Property(value = HomeCountry.DESCRIPTION, defaultCode = "unitedStates", example = "\"germany\"") Country country,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units) {

    static final int MAX_RESULTS = 200;
    static final int MAX_REASONS = 13;

    Set<TestReason> reasonsGiven() {
        return reasons == null ? Set.of() : Set.copyOf(reasons);
    }

    List<PrintedResult> lines() {
        return results.stream().map(ReportResultRequest::toDomain).toList();
    }

    WaterReport report() {
        return WaterReport.of(lines());
    }
}
