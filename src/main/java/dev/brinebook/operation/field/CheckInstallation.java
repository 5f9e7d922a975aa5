// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.answer.softener.ReadinessCheck;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.caution.Caution;
import dev.brinebook.field.InstallationCheck;
import dev.brinebook.field.InstallationCheck.Outcome;
import dev.brinebook.field.InstallationCheck.Seen;
import dev.brinebook.field.InstallationCheck.Sign;
import dev.brinebook.request.softener.SiteRequest;
import dev.brinebook.softener.Readiness;
import dev.brinebook.softener.Readiness.Condition;
import dev.brinebook.text.Message;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Whether an installation is a softener that can be converted. */
public final class CheckInstallation {

    public static final Operation<InstallationCheckRequest, InstallationCheckAnswer> OPERATION = new Operation<>(
            "checkInstallation", "/v1/installation-check", "Check whether an installation can be converted",
            "Choose this before a conversion, when it is not certain that the installation is a softener or that a metered controller "
                    + "fits it. It asks what a technician checks: salt tank, drain, softer water, valve, brine line, bore, room for a "
                    + "meter, power, bypass and resin. It states what each answer means, what has to be done first, and its cost where "
                    + "priced. For the whole job with a verdict choose assess.",
            InstallationCheckRequest.class, InstallationCheckAnswer.class, CheckInstallation::answer, List.of(),
            List.of("well-family", "apartment"));

    private CheckInstallation() {
    }

    private static InstallationCheckAnswer answer(InstallationCheckRequest request) {
        AnswerUnits units = HomeCountry.units(request.units(), request.country());
        Explanation explanation = units.explanation();
        explanation.caution(HomeCountry.airGap(HomeCountry.of(request.country(), explanation)));
        explanation.cautions(Caution.OF_INSTALLATION);
        assume(request, explanation);
        SiteRequest site = SiteRequest.orUnseen(request.site());
        Map<Condition, Money> prices = site.givenPrices();
        List<Readiness.Check> checks = checks(request, site);
        Map<Sign, Seen> signs = request.signs();
        Outcome outcome = InstallationCheck.outcome(signs, checks);
        Readiness.Cost cost = Readiness.cost(checks, prices.entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey,
                price -> price.getValue().value().doubleValue())));
        Optional<Money> priced = checks.stream().filter(check -> check.state() == Readiness.State.NOT_MET)
                .map(check -> prices.get(check.condition())).filter(price -> price != null).findFirst();
        Money sum = priced.map(price -> Money.of(cost.priced(), price.currency())).orElse(null);
        return new InstallationCheckAnswer(summary(outcome, signs, checks, sum), outcome,
                signs.entrySet().stream().map(sign -> InstallationSignLine.of(sign.getKey(), sign.getValue())).toList(),
                checks.stream().map(check -> ReadinessCheck.of(check, prices.get(check.condition()))).toList(), sum, cost.unpriced(),
                explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    /** The conditions; a bore that no peak is known for is to check on site. */
    private static List<Readiness.Check> checks(InstallationCheckRequest request, SiteRequest site) {
        Readiness.Site seen = site.toDomain(request.resinAgeYears());
        Readiness.Site known = request.peakFlow() != null ? seen : new Readiness.Site(seen.brineTankAndLine(), seen.drainLitresPerMinute(),
                seen.drain(), OptionalDouble.empty(), seen.placeForMeter(), seen.powerWithinReach(), seen.surgeProtection(), seen.bypass(),
                seen.resinGood(), seen.resinYears());
        return Readiness.of(known, request.backwash() == null ? 0 : request.backwash().inBase(),
                request.peakFlow() == null ? 0 : request.peakFlow().inBase());
    }

    private static void assume(InstallationCheckRequest request, Explanation explanation) {
        if (request.backwash() == null) {
            explanation.assume(Resolved.inWords("/backwash", Message.of("assumed.field.notCompared")).byDefault("CP-INSTALLATION"));
        }
        if (request.peakFlow() == null) {
            explanation.assume(Resolved.inWords("/peakFlow", Message.of("assumed.field.boreOnSite")).byDefault("CP-INSTALLATION"));
        }
    }

    private static Message summary(Outcome outcome, Map<Sign, Seen> signs, List<Readiness.Check> checks, Money cost) {
        List<Message> sentences = new ArrayList<>(List.of(Message.of(outcome)));
        long open = Arrays.stream(Sign.values()).filter(sign -> signs.get(sign) == Seen.NOT_CHECKED).count()
                + checks.stream().filter(check -> check.state() == Readiness.State.CHECK_ON_SITE).count();
        if (outcome == Outcome.CHECK_FIRST) {
            sentences.add(Message.of("installation.openQuestions", open));
        }
        if (cost != null && outcome != Outcome.NOT_A_SOFTENER) {
            sentences.add(Message.of("installation.costOfWork", Text.rounded(cost.value().doubleValue(),
                    cost.currency())));
        }
        return Message.sentences(sentences);
    }
}
