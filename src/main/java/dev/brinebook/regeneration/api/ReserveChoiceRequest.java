package dev.brinebook.regeneration.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.household.DrawnYears;
import dev.brinebook.household.api.HouseholdRequest;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.regeneration.SimulatedYears;
import dev.brinebook.regeneration.SmallestReserve;
import dev.brinebook.softener.api.CaseRequest;
import dev.brinebook.softener.api.ControlRequest;
import dev.brinebook.softener.api.PreferencesRequest;
import dev.brinebook.softener.api.ReserveRequest;
import dev.brinebook.softener.api.SoftenerRequest;
import dev.brinebook.water.api.WaterRequest;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.List;

@About("A softener with a delayed meter whose reserve is to be chosen.")
public record ReserveChoiceRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "The household.", required = true) HouseholdRequest household,
        @Property(value = "The softener. Of its control, where it is a delayed meter, the hardness, the capacity and the day"
                + " override are used.", required = true) SoftenerRequest softener,
        @Property(value = "Rules to try.", minItems = 1, maxItems = 12, fallback = "a share of 20 % of the meter volume, a mean"
                + " day, what a day stays below with probability 0.90 and 0.99, and the largest and the mean of the same weekday"
                + " in the last four weeks") List<ReserveRequest> rules,
        @Property(value = "Hard days of a year that are acceptable.", min = 0, max = SmallestReserve.MAX_HARD_DAYS,
                fallback = "1", example = "1") BigDecimal hardDaysPerYear,
        @Property(value = "Years to simulate.", min = SimulatedYears.MIN_YEARS, max = DrawnYears.MAX_YEARS, fallback = "500",
                example = "500") Integer years,
        @Property("Preferences: the start date, the capacities to count with.") PreferencesRequest preferences,
        @Property(value = "The units of the answer.", fallback = "us", example = "\"us\"") AnswerUnits units,
        @Property(value = "Sets the days that are drawn.", min = 0, max = PreferencesRequest.MAX_SEED, fallback = "1",
                example = "1") Long seed) implements CaseRequest, Checked {

    /** Enough for a standard error of a twentieth of a hard day where there are one or two a year. */
    static final int DEFAULT_YEARS = 500;

    @Override
    public void check(Violations at) {
        ControlRequest control = softener == null ? null : softener.control();
        if (control != null && control.kind() != null && control.kind() != ControlRequest.Kind.METERED_DELAYED) {
            at.at("softener").at("control").add("kind", Code.INCONSISTENT,
                    Message.of("must be meteredDelayed here: no other control keeps a reserve; leave control out to ask for"
                            + " one"));
        }
    }
}
