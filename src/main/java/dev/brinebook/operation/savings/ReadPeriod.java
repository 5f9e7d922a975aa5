// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.measurement.Reading;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.softener.ControlRequest.Kind;
import dev.brinebook.request.softener.PlusMinus;
import dev.brinebook.savings.SavingsPeriod;
import dev.brinebook.savings.StartedBy;
import dev.brinebook.text.Message;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** A period of a request in the domain. */
final class ReadPeriod {

    private static final double BAGS_AT_A_TIME = 2;

    private ReadPeriod() {
    }

    /**
     * The period of a request without violations.
     *
     * @param pointer where the request has it
     * @param bagKilograms salt in a bag where the period has none of its own
     */
    static SavingsPeriod of(SavingsPeriodRequest given, String pointer, double bagKilograms, Explanation explanation) {
        OptionalDouble litres = given.meter() != null
                ? OptionalDouble.of(given.meter().total().orElseThrow().litresPerDay())
                : given.water() == null ? OptionalDouble.empty() : OptionalDouble.of(given.water().inBase() / given.days());
        return new SavingsPeriod((int) given.days(), startedBy(given.control()), litres, given.regenerations() == null
                ? OptionalInt.empty() : OptionalInt.of(given.regenerations()), dose(given, pointer, explanation),
                given.bags() == null ? Optional.empty() : Optional.of(books(given, pointer, bagKilograms, explanation)),
                hardness(given.hardness()));
    }

    static OptionalDouble hardness(HardnessQuantity given) {
        return given == null ? OptionalDouble.empty() : OptionalDouble.of(given.inBase());
    }

    /** What starts regenerations with a kind of control. */
    static StartedBy startedBy(Kind control) {
        return switch (control) {
            case CLOCK -> StartedBy.CLOCK;
            case METERED_DELAYED -> StartedBy.METER_DELAYED;
            case METERED_IMMEDIATE, TWIN_ALTERNATING -> StartedBy.METER_IMMEDIATE;
        };
    }

    private static Optional<Reading> dose(SavingsPeriodRequest given, String pointer, Explanation explanation) {
        if (given.saltPerRegeneration() == null) {
            return Optional.empty();
        }
        double salt = given.saltPerRegeneration().inBase();
        double usual = Math.sqrt(3) * SavingsPeriod.ASSUMED_DOSE_UNCERTAINTY * salt;
        return Optional.of(Reading.within(salt, explanation.resolve(given.saltPerRegenerationPlusMinus(), usual,
                Resolved.of(pointer + "/saltPerRegenerationPlusMinus", AnswerUnits.of(explanation).mass(usual))
                        .byDefault("OWN-ASSUMPTION"))));
    }

    private static Reading books(SavingsPeriodRequest given, String pointer, double bagKilograms, Explanation explanation) {
        double bag = bag(given, bagKilograms);
        double added = given.bags().doubleValue() * bag;
        if (given.saltAtStart() == null) {
            explanation.assume(Resolved.of("bagsAtATime", BAGS_AT_A_TIME, null).byDefault("OWN-ASSUMPTION"));
            return SavingsPeriod.bagsAlone(added, BAGS_AT_A_TIME * bag);
        }
        double usual = SavingsPeriod.ASSUMED_LEVEL_PLUS_MINUS_KILOGRAMS;
        return SavingsPeriod.balance(added, given.saltAtStart().inBase(), given.saltAtEnd().inBase(),
                explanation.resolve(given.saltLevelPlusMinus(), usual, Resolved.of(pointer + "/saltLevelPlusMinus",
                        AnswerUnits.of(explanation).mass(usual)).byDefault("OWN-ASSUMPTION")));
    }

    private static double bag(SavingsPeriodRequest given, double bagKilograms) {
        return given.saltBag() == null ? bagKilograms : given.saltBag().mass().inBase();
    }

    /** Whether the salt of a bag is taken as usual. */
    static boolean restsOnUsualBag(SavingsPeriodRequest given) {
        return given.bags() != null && given.saltBag() == null;
    }

    /** Reports salt by bags and levels that is less than they may be off. */
    static void check(SavingsPeriodRequest given, LocalPrices prices, Violations at) {
        if (given == null || given.bags() == null || at.here() || given.from() == null || given.to() == null
                || given.saltBag() != null && !PlusMinus.isWhole(given.saltBag().mass())
                || given.saltAtStart() != null && !(PlusMinus.isWhole(given.saltAtStart()) && PlusMinus.isWhole(given.saltAtEnd()))
                || given.saltLevelPlusMinus() != null && !PlusMinus.isWhole(given.saltLevelPlusMinus())) {
            return;
        }
        Reading salt = books(given, "", prices.bagKilograms(new Explanation()), new Explanation());
        if (!(salt.value() >= Math.sqrt(6) / 2 * salt.standardUncertainty())) {
            at.add("bags", Code.INCONSISTENT, Message.of("problem.savings.tooLittleSalt"));
        }
    }
}
