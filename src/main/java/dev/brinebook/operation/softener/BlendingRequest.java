package dev.brinebook.operation.softener;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.water.Blend;
import dev.brinebook.water.Hardness;
import dev.brinebook.wording.Message;

@About("A water that is to keep a chosen hardness, by a bypass round the softener.")
public record BlendingRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "Hardness that the mixed water is to have, as a test of it finds: from the leakage of the softener"
                + " to below the hardness of the water.", required = true, min = 0, max = Hardness.MAX_MG_PER_L, unit = "mg/L")
        HardnessQuantity residualHardness,
        @Property(value = "The household.", required = true) HouseholdRequest household,
        @Property("The softener that stands there, to tell how long its capacity lasts. Its control, its minutes and its"
                + " flows are not needed here.") SoftenerRequest softener,
        @Property(value = "Hardness that passes the softener itself.", min = 0, max = Hardness.MAX_MG_PER_L, unit = "mg/L",
                fallback = "0 gpg") HardnessQuantity leakageHardness,
        @Property("Preferences, of which the capacities to count with are used.") PreferencesRequest preferences,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units)
        implements Checked {

    @Override
    public void check(Violations at) {
        if (water == null || at.at("water").here() || at.at("leakageHardness").here()) {
            return;
        }
        double raw = water.hardnessMgPerL();
        if (!(raw >= SoftenerCase.LEAST_HARDNESS_MG_PER_L)) {
            at.add("water", Code.IMPOSSIBLE, SoftenerCase.NOTHING_TO_SOFTEN);
        } else if (!(leakageMgPerL() < raw)) {
            at.add("leakageHardness", Code.INCONSISTENT, Message.of("must be below the hardness of the water"));
        } else if (residualHardness != null && !at.at("residualHardness").here()
                && !Blend.isPossible(raw, residualHardness.inBase(), leakageMgPerL())) {
            HardnessUnit unit = residualHardness.unit();
            Message range = Message.of("at least {0} and below {1} {2}", Text.number(unit.fromBase(leakageMgPerL())),
                    Text.number(unit.fromBase(raw)), unit.symbol());
            at.add(new Violation(at.at("residualHardness").pointer(), Code.OUT_OF_RANGE, Message.of("must be {0}, from what"
                    + " leaks through the softener to the hardness of the water", range), range, null,
                    Text.of(residualHardness).toString()));
        }
    }

    double leakageMgPerL() {
        return leakageHardness == null ? Blend.DEFAULT_LEAKAGE_MG_PER_L : leakageHardness.inBase();
    }
}
