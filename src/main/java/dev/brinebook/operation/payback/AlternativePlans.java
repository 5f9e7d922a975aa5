// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.Explanation;
import dev.brinebook.payback.AlternativePlan;
import dev.brinebook.payback.AlternativePlan.Possible;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.DoseSearch;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.MeterStart;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.softener.TunedClock;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Makes an option from a request: its softener and settings. */
final class AlternativePlans {

    private final AlternativesRequest request;
    private final SoftenerCase given;
    private final RunningCost cost;
    private final SoftenerSettings found;

    AlternativePlans(AlternativesRequest request, SoftenerCase given, RunningCost cost, SoftenerSettings found) {
        this.request = request;
        this.given = given;
        this.cost = cost;
        this.found = found;
    }

    AlternativePlan of(AlternativeRequest asked) {
        return new AlternativePlan(asked.name(), possible(asked), asked.outlay(), asked.visits());
    }

    /** Possible settings, by household: all that the request does not fix is chosen again for each. */
    private Function<DesignConditions, List<Possible>> possible(AlternativeRequest asked) {
        return switch (asked.kind()) {
            case AS_FOUND -> duty -> List.of(Possible.of(asFound(duty), duty));
            case TUNED_CLOCK -> this::tuned;
            case METERED -> metered(found.softener(), MeterStart.of(found.policy()));
            case REPLACEMENT -> metered(softener(asked), MeterStart.DELAYED);
            case TWIN_BEDS -> twin(softener(asked));
            case NO_SOFTENING -> duty -> List.of();
        };
    }

    private SoftenerSettings asFound(DesignConditions duty) {
        return duty == given.duty() ? found
                : request.softener().resolved(given.model()).found(given.under(duty), new Explanation()).setup();
    }

    private List<Possible> tuned(DesignConditions duty) {
        return TunedClock.possible(found.softener(), duty).stream().map(clock -> Possible.of(new SoftenerSettings(found.softener(),
                clock.saltDoseGramsPerLitre(), Map.of(), clock.clock(), MeterSettings.REGENERATION_HOUR), duty)).toList();
    }

    private Function<DesignConditions, List<Possible>> metered(Softener softener, MeterStart start) {
        // Most of them are asked one after the other for conditions that hardly differ.
        DoseChoice[] last = new DoseChoice[1];
        return duty -> {
            last[0] = DoseSearch.cheapest(softener, duty, cost, start, last[0]);
            return last[0].candidates(duty).stream().map(AlternativePlans::possible).toList();
        };
    }

    private Function<DesignConditions, List<Possible>> twin(Softener softener) {
        return duty -> List.of(possible(DoseSearch.atOnce(softener, duty, cost, MeterStart.TWIN)));
    }

    private static Possible possible(DoseChoice.Option option) {
        return new Possible(new SoftenerSettings(option.dosed().softener(), option.dosed().saltDoseGramsPerLitre(), Map.of(),
                option.settings().policy(), MeterSettings.REGENERATION_HOUR), option.regeneration(), option.year());
    }

    /** The new softener, its resin new; or tanks like the existing one. */
    private Softener softener(AlternativeRequest asked) {
        if (asked.softener() == null) {
            return found.softener();
        }
        CapacityModel capacity = PreferencesRequest.orNone(request.preferences()).capacity(request.water(),
                given.duty().water(), asked.softener().resinState(), new Explanation());
        Softener softener = asked.softener().asSoftener(given.found().softener().salt()).resolved(given.model()).toDomain(capacity,
                new Explanation()).inPlaceOf(found.softener());
        SoftenerCase.requireDoses(softener, "/alternatives");
        return softener;
    }
}
