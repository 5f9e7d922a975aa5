// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Alternatives;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.LengthQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.api.quantity.SaltEfficiencyQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.model.Model;
import dev.brinebook.payback.Retrofit;
import dev.brinebook.resin.Brining;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.Fit;
import dev.brinebook.softener.Sizing;
import dev.brinebook.softener.Softener;
import java.util.OptionalDouble;

@SchemaDescription("A softener to choose from. Give its resin volume, its name plate capacity, or the diameter and height of its tank.")
@Alternatives(value = {"resinVolume", "nameplateCapacity", "tankDiameter + tankHeight"}, required = true, several = true)
public record CandidateRequest(
        @Property(value = "Your name for it.", required = true, minItems = 1, maxItems = 64,
                example = "\"S-150\"") String sku,
        @Property(value = "Resin volume. It takes precedence over the name plate and the tank size.", min = ResinBed.MIN_RESIN_LITRES,
                max = Softener.MAX_RESIN_LITRES, unit = "L") VolumeQuantity resinVolume,
        @Property(value = "Name plate capacity. 24,000, 32,000, 48,000 and 64,000 gr usually mean 0.75, 1, 1.5 and 2 cubic "
                + "feet of resin.", min = SoftenerRequest.MIN_NAMEPLATE_GRAMS, max = SoftenerRequest.MAX_NAMEPLATE_GRAMS, unit = "g")
        CapacityQuantity nameplateCapacity,
        @Property(value = "Inner diameter of the resin tank.", min = ResinBed.MIN_TANK_DIAMETER_METRES,
                max = Softener.MAX_TANK_DIAMETER_METRES, unit = "m",
                fallback = "that of the smallest standard tank that holds the resin; what depends on it is not checked")
        LengthQuantity tankDiameter,
        @Property(value = "Inside height of the resin tank.", min = Softener.MIN_TANK_HEIGHT_METRES,
                max = Softener.MAX_TANK_HEIGHT_METRES, unit = "m",
                fallback = "that of the smallest standard tank that holds the resin; what depends on it is not checked")
        LengthQuantity tankHeight,
        @Property(value = "Direction of the brine through the bed. Used when the capacity method is column.",
                defaultCode = "coCurrent", example = "\"coCurrent\"") Brining.Direction brineDirection,
        @Property(value = "Purchase price.", min = 0, max = Retrofit.MAX_COST, fallback = "unknown: if any price "
                + "is unknown, all are ranked by the usual price of "
                + "their resin") Money price,
        @Property(value = "Continuous flow rated by its maker.", min = 0.1, max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE,
                unit = "L/min", fallback = "unknown: only the guides for resin beds apply") FlowQuantity continuousFlowRating,
        @Property(value = "Peak flow rated by its maker.", min = 0.1, max = FlowsRequest.MAX_FLOW_LITRES_PER_MINUTE,
                unit = "L/min", fallback = "unknown: only the guides for resin beds apply") FlowQuantity peakFlowRating,
        @Property(value = "Certified salt efficiency rating, if any.", min = 0, aboveMin = true, max = 6_000,
                unit = "gr/lb", fallback = "none") SaltEfficiencyQuantity certifiedEfficiency) implements Checked {

    @Override
    public void check(Violations at) {
        asSoftener(null).check(at);
    }

    /** The same softener as an existing one, regenerated with {@code salt}. */
    public SoftenerRequest asSoftener(Salt salt) {
        return new SoftenerRequest(resinVolume, nameplateCapacity, tankDiameter, tankHeight, salt, null, null, null, null,
                null, null, null, null, brineDirection, null, null, null);
    }

    /** New resin, with the brine direction of this valve. */
    public ResinState resinState() {
        return brineDirection == null ? ResinState.NEW : new ResinState(ResinState.NEW.resin(), brineDirection);
    }

    /**
     * A product to replace a softener, with the salt of the existing one.
     *
     * @param cost its first cost
     * @throws dev.brinebook.api.InvalidRequest when its size can be worked out for no dose
     */
    public Sizing.Candidate asGoods(double cost, CaseRequest request, SoftenerCase given) {
        CapacityModel capacity = PreferencesRequest.orNone(request.preferences()).capacity(request.water(), given.duty().water(),
                resinState(), new Explanation());
        Softener softener = asSoftener(given.found().softener().salt()).resolved(given.model()).toDomain(capacity, new Explanation())
                .inPlaceOf(given.found().softener());
        SoftenerCase.requireDoses(softener, "/water");
        return new Sizing.Candidate(sku, softener, datasheet(given.model()), OptionalDouble.of(cost));
    }

    /** What is stated of it beside its resin. */
    public Fit.Datasheet datasheet(Model model) {
        return new Fit.Datasheet(FlowsRequest.base(continuousFlowRating), FlowsRequest.base(peakFlowRating),
                asSoftener(null).resolved(model).tankSize());
    }
}
