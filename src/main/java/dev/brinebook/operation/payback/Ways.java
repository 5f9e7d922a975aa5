package dev.brinebook.operation.payback;

import dev.brinebook.api.Explanation;
import dev.brinebook.payback.Way;
import dev.brinebook.payback.Way.Possible;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.MeterStart;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.Setup;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.TunedClock;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Makes a way of going on from what is asked for: what stands there then, and how it is set. */
final class Ways {

    private final AlternativesRequest request;
    private final SoftenerCase given;
    private final RunningCost cost;
    private final Setup found;

    Ways(AlternativesRequest request, SoftenerCase given, RunningCost cost, Setup found) {
        this.request = request;
        this.given = given;
        this.cost = cost;
        this.found = found;
    }

    Way of(AlternativeRequest asked) {
        return new Way(asked.name(), possible(asked), asked.outlay(), asked.visits());
    }

    /** What could be set, by the household: all that is not fixed by the caller is chosen anew for each. */
    private Function<Duty, List<Possible>> possible(AlternativeRequest asked) {
        return switch (asked.kind()) {
            case AS_FOUND -> duty -> List.of(Possible.of(asFound(duty), duty));
            case TUNED_CLOCK -> this::tuned;
            case METERED -> metered(found.softener(), MeterStart.of(found.policy()));
            case REPLACEMENT -> metered(softener(asked), MeterStart.DELAYED);
            case TWIN_BEDS -> twin(softener(asked));
            case NO_SOFTENING -> duty -> List.of();
        };
    }

    private Setup asFound(Duty duty) {
        return duty == given.duty() ? found
                : request.softener().found(new SoftenerCase(duty, given.found()), new Explanation()).setup();
    }

    private List<Possible> tuned(Duty duty) {
        return TunedClock.possible(found.softener(), duty).stream().map(clock -> Possible.of(new Setup(found.softener(),
                clock.saltDoseGramsPerLitre(), Map.of(), clock.clock(), MeterSettings.REGENERATION_HOUR), duty)).toList();
    }

    private Function<Duty, List<Possible>> metered(Softener softener, MeterStart start) {
        return duty -> DoseChoice.cheapest(softener, duty, cost, start).candidates(duty).stream().map(Ways::possible).toList();
    }

    private Function<Duty, List<Possible>> twin(Softener softener) {
        return duty -> List.of(possible(DoseChoice.atOnce(softener, duty, cost, MeterStart.TWIN)));
    }

    private static Possible possible(DoseChoice.Option option) {
        return new Possible(new Setup(option.dosed().softener(), option.dosed().saltDoseGramsPerLitre(), Map.of(),
                option.settings().policy(), MeterSettings.REGENERATION_HOUR), option.dosed().regeneration(), option.year());
    }

    /** The new softener, its resin new; or beds like the one that stands there. */
    private Softener softener(AlternativeRequest asked) {
        if (asked.softener() == null) {
            return found.softener();
        }
        CapacityModel capacity = PreferencesRequest.orNone(request.preferences()).capacity(request.water(),
                given.duty().water(), asked.softener().resinState(), new Explanation());
        Softener softener = asked.softener().asSoftener(given.found().softener().salt()).toDomain(capacity,
                new Explanation()).inPlaceOf(found.softener());
        SoftenerCase.requireDoses(softener, "/alternatives");
        return softener;
    }
}
