package dev.brinebook.softener.api;

import dev.brinebook.household.api.HouseholdRequest;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.water.api.WaterRequest;

/** A request about a softener that stands there; its parts make a {@link SoftenerCase}. */
public interface CaseRequest {

    WaterRequest water();

    HouseholdRequest household();

    SoftenerRequest softener();

    PreferencesRequest preferences();

    AnswerUnits units();

    Long seed();

    /** What was seen on site; null where it is not asked for. */
    default SiteRequest site() {
        return null;
    }
}
