// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.request.softener.CapacityMethod;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.ResinState;
import dev.brinebook.resin.Brining;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.ColumnCapacity;
import dev.brinebook.resin.Resin;
import dev.brinebook.resin.Salt;
import dev.brinebook.resin.TotalCapacity;
import dev.brinebook.text.Message;
import dev.brinebook.water.CompensationFactors;
import dev.brinebook.water.SoftenedWater;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Capacity at each salt dose: by the tables, and by the column in the water given. */
public final class ChartResinCapacity {

    public static final Operation<ResinCapacityRequest, ResinCapacityAnswer> OPERATION = new Operation<>(
            "chartResinCapacity", "/v1/resin-capacity", "Chart the capacity against the salt dose",
            "Choose this to see the effect of a salt dose in this water: capacity, hardness leakage and salt efficiency, by the tables "
                    + "of the trade and by the column, which uses the water given. It also shows which doses do not work in this water, "
                    + "and up to which dose the published efficiency limits are met. For the cheapest dose of a household choose "
                    + "sizeSoftener, or assess for an existing softener.",
            ResinCapacityRequest.class, ResinCapacityAnswer.class, ChartResinCapacity::answer, List.of(),
            List.of("well-family", "apartment", "brackish"));

    private static final String OWN = "OWN-ASSUMPTION";

    private ChartResinCapacity() {
    }

    private static ResinCapacityAnswer answer(ResinCapacityRequest request) {
        AnswerUnits units = HomeCountry.units(request.units(), request.country());
        Explanation explanation = HomeCountry.explanation(units, request.country());
        HomeCountry.of(request.country(), explanation);
        WaterAnalysis water = request.water().toDomain(explanation);
        Salt salt = explanation.resolve("/salt", request.salt(), Salt.SODIUM_CHLORIDE, OWN);
        List<Double> doses = request.dosesGramsPerLitre(explanation);
        ColumnResinRequest resin = ColumnResinRequest.orNew(request.resin());
        Resin fresh = resin.whenNew(explanation);
        double sitesLeft = resin.sitesLeft(water, explanation);
        ResinState state = new ResinState(fresh.withSitesLeft(sitesLeft),
                explanation.resolve("/brineDirection", request.brineDirection(), Brining.Direction.CO_CURRENT, "CP-WORKING-TABLE"));
        PreferencesRequest preferences = PreferencesRequest.orNone(request.preferences());
        Optional<ColumnCapacity> column = column(request, preferences, water, state, explanation);
        explain(water, salt, state.resin(), units, explanation);
        TableAtDose.explain(sitesLeft, units, explanation);
        ChartedColumn.explain(column, explanation);
        ColumnAtDose.explain(column, salt, explanation);
        EfficiencyLineReach.explain(explanation);
        ChartedColumn charted = ChartedColumn.of(column, preferences.endPointMgPerL(explanation), salt, units);
        List<CapacityPoint> points = doses.stream().map(dose -> point(dose, salt, state.resin(), sitesLeft, column, units))
                .toList();
        List<EfficiencyLineReach> lines = EfficiencyLineReach.all(salt, sitesLeft, column, units);
        return new ResinCapacityAnswer(explanation.behindStops(CapacitySentences.of(points, charted, lines, explanation)),
                ChartedWater.of(PreferencesRequest.feed(request.water(), water), units),
                units.bedCapacity(TotalCapacity.gramsPerLitre(state.resin().totalEquivalentsPerLitre())), charted, points,
                lines, explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    /** The column of this water, unless the water is too soft for its end point. */
    private static Optional<ColumnCapacity> column(ResinCapacityRequest request, PreferencesRequest preferences,
            WaterAnalysis water, ResinState state, Explanation explanation) {
        double end = preferences.endPointMgPerL(explanation);
        return ColumnCapacity.isFor(PreferencesRequest.feed(request.water(), water), end)
                ? Optional.of(preferences.column(request.water(), water, state, explanation)) : Optional.empty();
    }

    private static CapacityPoint point(double dose, Salt salt, Resin resin, double sitesLeft,
            Optional<ColumnCapacity> column, AnswerUnits units) {
        return new CapacityPoint(units.saltDose(dose), TableAtDose.of(CapacityTable.WORKING, sitesLeft, salt, dose, units),
                TableAtDose.of(CapacityTable.NEW_RESIN, sitesLeft, salt, dose, units),
                column.map(model -> ColumnAtDose.of(model, salt, dose, units)).orElse(null),
                units.bedCapacity(TotalCapacity.ceilingGramsPerLitre(salt, dose, resin.totalEquivalentsPerLitre())));
    }

    private static void explain(WaterAnalysis water, Salt salt, Resin resin, AnswerUnits units, Explanation explanation) {
        explanation.cautions(WaterCautions.of(water));
        explanation.cautions(SoftenedWater.of(water.compensated(CompensationFactors.STOICHIOMETRIC),
                water.sodiumMgPerL(), salt == Salt.POTASSIUM_CHLORIDE).cautions());
        explanation.caution(Caution.EFFICIENCY_NOT_CERTIFIED, Caution.LOCAL_CODE_DECIDES);
        explanation.cautions(WaterCautions.ofDischarge(water.supply()));
        assumeReach(salt, explanation);
        explanation.because("/totalCapacity", Message.of("formula.resin.eqLExchangeSites",
                Text.number(resin.totalEquivalentsPerLitre()), new BigDecimal("50.04")), "WCP-2011");
        explanation.because("/points/*/stoichiometricCapacity", Message.of("formula.resin.oneEquivalentHardnessOne",
                Text.of(units.saltEfficiency(Salt.SODIUM_CHLORIDE.ceilingGramsPerGram())),
                Text.of(units.saltEfficiency(Salt.POTASSIUM_CHLORIDE.ceilingGramsPerGram()))), "WT-2014");
    }

    /** What the tables and the column ignore. */
    private static void assumeReach(Salt salt, Explanation explanation) {
        String both = Arrays.stream(CapacityMethod.values()).map(WireNames::of).collect(Collectors.joining(", "));
        explanation.assume(Resolved.ofCode("capacityMethods", both).byDefault(OWN)
                .noting(Message.of("assumed.resin.usedCapacityTableEquilibrium")));
        explanation.assume(Resolved.inWords("tables", Message.of("assumed.resin.gelResin19")).byDefault("CP-WORKING-TABLE"));
        explanation.assume(Resolved.inWords("ironAndManganese", Message.of("assumed.resin.includedWhicheverHardnessCompensation"))
                .byDefault(OWN));
        if (salt == Salt.POTASSIUM_CHLORIDE) {
            explanation.assume(Resolved.inWords("potassiumChloride", Message.of("assumed.resin.capacityTablesTreatSodium"))
                    .byDefault("CIAAW"));
        }
    }
}
