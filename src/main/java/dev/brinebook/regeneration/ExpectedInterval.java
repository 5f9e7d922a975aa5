package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import org.hipparchus.special.Gamma;

/** How long a delayed meter waits on the mean of endlessly many days: the smooth companion of a simulated year. */
public final class ExpectedInterval {

    /** Days that scatter less than this count as all alike, where the gamma distribution is a step. */
    private static final double ALIKE_CV = 0.01;

    private ExpectedInterval() {
    }

    /**
     * Mean days between two regenerations of a delayed meter.
     *
     * <pre>E(N) = 1 + Σ P(S_n &lt; m),  n = 1 … D − 1;   S_n gamma of shape n/CV² and scale u CV²</pre>
     *
     * <p>N nights from one regeneration to the next; m litres counted down before it calls, the meter volume less the
     * reserve; D day override; S_n use of n days; u mean use of a day, litres; CV scatter of a day about its mean.
     * Validity: days that do not depend on each other; m from 0, u from 0, D from 1. Days that scatter by less than 1 %
     * count as all alike.
     * Source: [DAIAD] gamma days; the sum is that of the chances to be still waiting after n nights, by definition of the
     * mean.
     * Deviation: weekdays and vacant days are in u and CV only.
     */
    public static double days(double countedLitres, double meanLitres, double cv, int overrideDays) {
        Guard.notNegative(countedLitres, "countedLitres");
        Guard.notNegative(meanLitres, "meanLitres");
        Guard.notNegative(cv, "cv");
        Guard.within(overrideDays, 1, Policy.MAX_INTERVAL_DAYS, "overrideDays");
        double days = 1;
        for (int n = 1; n < overrideDays; n++) {
            days += waitingShare(n, countedLitres, meanLitres, cv);
        }
        return days;
    }

    /**
     * Mean days between two regenerations under any policy.
     *
     * <p>A clock keeps its own time, on weekdays that of their mean. A meter that starts at once waits V/u, but no longer than
     * its override; V meter volume, u mean use. A delayed one as above; one that keeps back what the same weekday used counts
     * as if it kept back its first reserve.
     */
    public static double days(Policy policy, double meanLitres, double cv) {
        int override = policy.overrideDays() == Policy.NO_OVERRIDE ? Policy.MAX_INTERVAL_DAYS : policy.overrideDays();
        if (policy instanceof ClockEveryDays clock) {
            return Math.min(clock.days(), override);
        }
        if (policy instanceof ClockOnWeekdays clock) {
            return Math.min(7.0 / clock.weekdays().size(), override);
        }
        if (policy.startsAtOnce()) {
            return meanLitres * override < policy.meterVolumeLitres() ? override : policy.meterVolumeLitres() / meanLitres;
        }
        double reserve = policy instanceof MeteredDelayed delayed ? delayed.reserveLitres()
                : ((MeteredByHistory) policy).firstReserveLitres();
        return days(Math.max(0, policy.meterVolumeLitres() - reserve), meanLitres, cv, override);
    }

    private static double waitingShare(int days, double countedLitres, double meanLitres, double cv) {
        if (meanLitres == 0 || cv < ALIKE_CV) {
            return days * meanLitres < countedLitres ? 1 : 0;
        }
        return Gamma.regularizedGammaP(days / (cv * cv), countedLitres / (meanLitres * cv * cv));
    }
}
