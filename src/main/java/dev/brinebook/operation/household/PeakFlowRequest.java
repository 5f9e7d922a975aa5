package dev.brinebook.operation.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
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

@About("Fixtures whose peak flow is to be estimated: those that the softener is to serve.")
public record PeakFlowRequest(
        @Property(value = "The fixtures, kind by kind.", required = true, minItems = 1, maxItems = FixtureSchedule.MAX_KINDS)
        List<FixtureRequest> fixtures,
        @Property(value = "Demand curve of the plumbing code.", fallback = "flushometer when a flushometer valve flushes any"
                + " closet or urinal, which in a small building draws more than all else; else flushTank")
        DemandCurve demandCurve,
        @Property(value = "Kind of building, for the method of design flows.", fallback = "dwelling")
        BuildingType buildingType,
        @Property(value = "Percent of the moments in which water is drawn that the peak is not exceeded in. For the exact and"
                + " the fitted method.", min = PeakFlowRequest.MIN_PERCENTILE, max = PeakFlowRequest.MAX_PERCENTILE,
                unit = "%", example = "99", fallback = "99 %") BigDecimal percentile,
        @Property(value = HomeCountry.DESCRIPTION, fallback = "unitedStates", example = "\"germany\"") Country country,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units) {

    static final double MIN_PERCENTILE = 100 * PeakFlow.MIN_PERCENTILE;
    static final double MAX_PERCENTILE = 100 * PeakFlow.MAX_PERCENTILE;
}
