// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.household.BuildingType;
import dev.brinebook.household.Country;
import dev.brinebook.household.DemandCurve;
import dev.brinebook.household.FixtureSchedule;
import dev.brinebook.household.PeakFlow;
import dev.brinebook.request.household.FixtureRequest;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("Fixtures served by the softener, to estimate their peak flow.")
public record PeakFlowRequest(
        @Property(value = "The fixtures, kind by kind.", required = true, minItems = 1, maxItems = FixtureSchedule.MAX_KINDS)
        List<FixtureRequest> fixtures,
        @Property(value = "Demand curve of the plumbing code.", fallback = "flushometer if any closet or urinal has a flushometer "
                + "valve, which in a small building draws more than all other fixtures; else flushTank")
        DemandCurve demandCurve,
        @Property(value = "Building type, for the German standard.", defaultCode = "dwelling")
        BuildingType buildingType,
        @Property(value = "Percent of the moments with any flow in which the peak is not exceeded. For the exact and the "
                + "fitted method.", min = PeakFlowRequest.MIN_PERCENTILE, max = PeakFlowRequest.MAX_PERCENTILE,
                unit = "%", example = "99", byDefault = PeakFlowRequest.DEFAULT_PERCENTILE) BigDecimal percentile,
        @Property(value = HomeCountry.DESCRIPTION, defaultCode = "unitedStates", example = "\"germany\"") Country country,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units) {

    static final double DEFAULT_PERCENTILE = 100 * PeakFlow.DEFAULT_PERCENTILE;
    static final double MIN_PERCENTILE = 100 * PeakFlow.MIN_PERCENTILE;
    static final double MAX_PERCENTILE = 100 * PeakFlow.MAX_PERCENTILE;
}
