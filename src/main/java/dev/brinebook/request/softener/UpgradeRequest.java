package dev.brinebook.request.softener;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.verdict.Improvement;
import dev.brinebook.wording.Message;
import java.util.Arrays;

@About("Something else that the shop could do to the softener, or put in its place.")
public record UpgradeRequest(
        @Property(value = "What: add a second tank of the same size; fit the next larger standard tank of resin; draw the brine against"
                + " the direction of service; or replace the softener.", required = true, example = "\"secondTank\"")
        UpgradeRequest.Kind kind,
        @Property(value = "What it costs, parts and work, less any rebate; with the metered controller, where there is none yet.",
                required = true) Money cost,
        @Property(value = "The softener that is put there. Only with replacement, where it must be given; cost is what counts, not its"
                + " price.", fallback = "none") CandidateRequest softener) implements Checked {

    /** What is done. */
    public enum Kind {
        SECOND_TANK, LARGER_BED, COUNTER_CURRENT, REPLACEMENT;

        /** The improvement of the same name; of a replacement none. */
        Improvement improvement() {
            return Arrays.stream(Improvement.values()).filter(one -> one.name().equals(name())).findFirst().orElse(null);
        }
    }

    @Override
    public void check(Violations at) {
        ConversionRequest.checkAmount(cost, "cost", at);
        if (kind == Kind.REPLACEMENT && softener == null && !at.at("softener").here()) {
            at.add("softener", Code.MISSING, Message.of("softener is missing: a replacement is tried with its size"));
        } else if (kind != null && kind != Kind.REPLACEMENT && softener != null) {
            at.add("softener", Code.INCONSISTENT, Message.of("must be left out unless the kind is replacement"));
        }
    }
}
