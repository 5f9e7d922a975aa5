package dev.brinebook.payback.api;

import dev.brinebook.api.Explanation;
import dev.brinebook.payback.Way;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.TwinAlternating;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.Setup;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.TunedClock;
import dev.brinebook.softener.api.PreferencesRequest;
import dev.brinebook.softener.api.SoftenerCase;
import java.util.Map;
import java.util.Optional;

/** Makes a way of going on from what is asked for: what stands there then, and how it is set. */
final class Ways {

    private final AlternativesRequest request;
    private final SoftenerCase given;
    private final RunningCost cost;
    private final Setup found;

    Ways(AlternativesRequest request, SoftenerCase given, RunningCost cost, Explanation explanation) {
        this.request = request;
        this.given = given;
        this.cost = cost;
        found = request.softener().found(given, explanation).setup();
    }

    Way of(AlternativeRequest asked) {
        return Way.of(asked.name(), setup(asked), asked.outlay(), asked.visits(), given.duty().water().temperatureCelsius());
    }

    private Optional<Setup> setup(AlternativeRequest asked) {
        return switch (asked.kind()) {
            case AS_FOUND -> Optional.of(found);
            case TUNED_CLOCK -> Optional.of(tuned());
            case METERED -> Optional.of(metered(found.softener(), false));
            case REPLACEMENT -> Optional.of(metered(softener(asked), false));
            case TWIN_BEDS -> Optional.of(metered(softener(asked), true));
            case NO_SOFTENING -> Optional.empty();
        };
    }

    private Setup tuned() {
        TunedClock tuned = TunedClock.of(found.softener(), given.duty(), cost);
        return new Setup(found.softener(), tuned.saltDoseGramsPerLitre(), Map.of(), tuned.clock(),
                MeterSettings.REGENERATION_HOUR);
    }

    private Setup metered(Softener softener, boolean twin) {
        DoseChoice.Option option = DoseChoice.cheapest(softener, given.duty(), cost).best();
        Policy policy = twin ? new TwinAlternating(option.settings().meterLitres(), option.settings().overrideDays())
                : option.settings().policy();
        return new Setup(softener, option.dosed().saltDoseGramsPerLitre(), Map.of(), policy,
                MeterSettings.REGENERATION_HOUR);
    }

    /** The new softener, its resin new; or beds like the one that stands there. */
    private Softener softener(AlternativeRequest asked) {
        if (asked.softener() == null) {
            return found.softener();
        }
        CapacityModel capacity = PreferencesRequest.orNone(request.preferences()).capacity(request.water(),
                given.duty().water(), asked.softener().resinState(), new Explanation());
        Softener softener = asked.softener().asSoftener(given.found().softener().salt()).toDomain(capacity,
                new Explanation());
        SoftenerCase.requireDoses(softener, "/alternatives");
        return softener;
    }
}
