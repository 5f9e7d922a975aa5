// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.Retrofit;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Improvement;
import java.util.Arrays;

@SchemaDescription("Another improvement of the softener, or its replacement.")
public record UpgradeRequest(
        @Property(value = "Kind of improvement: add a second tank of the same size; fit the next larger standard tank of "
                + "resin; draw the brine counter-current to service; or replace the softener.", required = true, example = "\"secondTank\"")
        UpgradeRequest.Kind kind,
        @Property(value = "Cost, parts and labour, less any rebate. Include the metered controller, if there is none yet.",
                required = true, min = 0, max = Retrofit.MAX_COST) Money cost,
        @Property(value = "The new softener. Required with replacement, and allowed only there. Its cost is the field cost, "
                + "not the price in this object.", fallback = "none") CandidateRequest softener) implements Checked {

    /** Kind of option. */
    public enum Kind {
        SECOND_TANK, LARGER_BED, COUNTER_CURRENT, REPLACEMENT;

        /** The improvement of the same name; of a replacement none. */
        Improvement improvement() {
            return Arrays.stream(Improvement.values()).filter(one -> one.name().equals(name())).findFirst().orElse(null);
        }
    }

    @Override
    public void check(Violations at) {
        RetrofitRequest.checkAmount(cost, "cost", at);
        if (kind == Kind.REPLACEMENT && softener == null && !at.at("softener").here()) {
            at.add("softener", Code.MISSING, Message.of("upgrade.missingSoftenerReplacementCalculated"));
        } else if (kind != null && kind != Kind.REPLACEMENT && softener != null) {
            at.add("softener", Code.INCONSISTENT, Message.of("problem.softener.omitUnlessKindReplacement"));
        }
    }
}
