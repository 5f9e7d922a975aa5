// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.softener;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
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
import dev.brinebook.text.Message;
import dev.brinebook.water.Blend;
import dev.brinebook.water.Hardness;
import java.util.List;

@SchemaDescription("A water to blend to a chosen hardness, with a bypass around the softener.")
public record BlendingRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "Hardness after blending, as a test would find it: from the leakage of the softener to below the "
                + "hardness of the raw water.", required = true, min = 0, max = Hardness.MAX_MG_PER_L, unit = "mg/L")
        HardnessQuantity residualHardness,
        @Property(value = "The household.", required = true) HouseholdRequest household,
        @Property("The existing softener, to calculate how long its capacity lasts. Its control, minutes and "
                + "flows are not needed here.") SoftenerRequest softener,
        @Property(value = "Hardness leakage of the softener.", min = 0, max = Hardness.MAX_MG_PER_L, unit = "mg/L",
                byDefault = Blend.DEFAULT_LEAKAGE_MG_PER_L) HardnessQuantity leakageHardness,
        @Property("Preferences. Only the capacity table is used.") PreferencesRequest preferences,
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
            at.add("leakageHardness", Code.INCONSISTENT, Message.of("problem.softener.mustBelowHardnessWater"));
        } else if (residualHardness != null && !at.at("residualHardness").here()
                && !Blend.isPossible(raw, residualHardness.inBase(), leakageMgPerL())) {
            HardnessUnit unit = residualHardness.unit();
            Message range = Message.of("blending.leastBelow", Text.number(unit.fromBase(leakageMgPerL())),
                    Text.measure(Text.number(unit.fromBase(raw)), unit.symbol()));
            at.add(new Violation(at.at("residualHardness").pointer(), Code.OUT_OF_RANGE,
                    Message.of("problem.softener.mustHardnessLeakageSoftener", range), List.of(range), null,
                    Text.of(residualHardness).toString()));
        }
    }

    double leakageMgPerL() {
        return leakageHardness == null ? Blend.DEFAULT_LEAKAGE_MG_PER_L : leakageHardness.inBase();
    }
}
