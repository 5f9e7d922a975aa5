// SPDX-License-Identifier: Apache-2.0
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** A service under attack, beside a well-behaved caller; prints a row of the table for each attack. */
final class Scene {

    /** What the well-behaved caller is owed. */
    enum Owed {
        /** Every answer, and 99 % of them in three times what they take without the attack, or soon enough anyway. */
        IN_TIME,
        /** Every answer. */
        ANSWERS,
        /** Every answer, or 503 with Retry-After: there are as many connections as may be. */
        ANSWERS_OR_REFUSALS
    }

    private static final double QUIET_SECONDS = 3;
    private static final double MOST_TIMES_QUIET = 3;
    /** Soon enough for a caller, however fast an idle service is: the calculations and sheets of others are waited for. */
    private static final double SOON_MILLIS = 500;
    /**
     * Where 99 % of the calls without an attack take up to more than this, ten times what they usually do, the machine has no
     * time for the service. The clock cannot separate an attack from that: refusals are then counted as answers, and no time is judged.
     */
    private static final double MOST_QUIET_MILLIS = 75;
    /** From a limit to the end of a request, where it takes this many times longer than a call without an attack. */
    private static final double MOST_TIMES_QUIET_TO_END = 20;
    /** On a machine that does other things as well, the quiet value and the attack are measured anew, in turn, so often. */
    static final int MOST_PAIRS = 3;
    private static final String ROW = "%-44s | %-38s | %7s | %-24s | %8s | %11s | %7s | %11s | %s%n";

    private final Service service;
    private final GoodCaller good;
    private final String trial;
    private final Lab lab;

    Scene(String trial, Lab lab, Service service, GoodCaller good) {
        this.trial = trial;
        this.lab = lab;
        this.service = service;
        this.good = good;
    }

    static void printHead() {
        System.out.printf(ROW, "attack", "its answers", "cut off", "well-behaved", "heap MB", "processor s", "threads",
                "descriptors", "p99 ms quiet / attacked");
    }

    Service service() {
        return service;
    }

    /**
     * How an attack went.
     *
     * @param state of the service in the midst of it, or null when the process had ended
     * @param processorSeconds of the service
     * @param othersShare part of its processor that others took
     * @param quietMillis within which 99 % of the well-behaved caller's answers come without the attack
     */
    record Outcome(Attack attack, Tally good, Service.State state, double processorSeconds, double othersShare,
            double quietMillis) {

        /** For each answer to the attack that is no refusal. */
        double secondsEach() {
            return processorSeconds / Math.max(1, attack.tally.served());
        }
    }

    /** Whether all is as it must be once the callers have begun, before anything is measured. */
    interface Settled {
        boolean wait(Attack attack) throws InterruptedException;
    }

    /** Lets callers attack for some seconds. */
    Outcome attack(String label, Owed owed, double seconds, Consumer<Attack> callers) throws IOException, InterruptedException {
        return attack(label, owed, seconds, callers, MOST_PAIRS, attack -> {
            Thread.sleep(300);
            return true;
        });
    }

    /** The same, measured so often at most, each time once the attack has settled. */
    Outcome attack(String label, Owed owed, double seconds, Consumer<Attack> callers, int mostPairs, Settled settled)
            throws IOException, InterruptedException {
        for (int pair = 1;; pair++) {
            Tally quiet = askQuietly(label);
            Attack attack = new Attack(service);
            callers.accept(attack);
            double before = service.processorSeconds();
            attack.begin();
            GoodCaller.Window attacked;
            Service.State state;
            double processorSeconds;
            double others;
            boolean ready;
            try (attack) {
                ready = settled.wait(attack);
                Processor processor = new Processor(service);
                attacked = good.ask(seconds);
                others = processor.othersShare();
                processorSeconds = service.processorSeconds() - before;
                state = service.isAlive() ? service.state() : null;
            }
            double mostMillis = Math.max(SOON_MILLIS, MOST_TIMES_QUIET * quiet.p99Millis()) + attacked.ownDelayMillis();
            double tookMillis = attacked.tally().p99Millis();
            print(label, attack.tally, attacked.tally(), state, processorSeconds, text("%.1f / %.1f (%.1f its own; others %.0f %%)",
                    quiet.p99Millis(), tookMillis, attacked.ownDelayMillis(), 100 * others));
            boolean slow = quiet.p99Millis() > MOST_QUIET_MILLIS;
            boolean last = pair == mostPairs;
            List<String> felt = felt(slow && last ? Owed.ANSWERS_OR_REFUSALS : owed, attacked.tally());
            boolean late = owed == Owed.IN_TIME && tookMillis > mostMillis && !(slow && last);
            boolean again = service.isAlive() && !last
                    && (late && felt.isEmpty() || !felt.isEmpty() && (slow || !Processor.isQuiet(others)));
            if (!again) {
                felt.forEach(what -> holds(false, label, what));
                holds(!late, label, text("99 %% of the well-behaved caller's answers take %.1f ms, more than %.1f ms", tookMillis,
                        mostMillis));
                holds(service.isAlive(), label, "the process ended");
                holds(ready || slow, label, "not all callers were answered before the measuring began");
                holds(attack.tally.refusalsWithoutRetry() == 0, label, "callers are refused without Retry-After");
                holds(attack.tally.strangeAnswers().isEmpty(), label, "the service failed: " + attack.tally.strangeAnswers());
                return new Outcome(attack, attacked.tally(), state, processorSeconds, others, quiet.p99Millis());
            }
            Thread.sleep(1_000);
        }
    }

    /** Whether the machine had no time for the service. */
    static boolean isSlow(Outcome outcome) {
        return outcome.quietMillis() > MOST_QUIET_MILLIS;
    }

    /** How the well-behaved caller is answered without an attack: all that it asks, once the machine has time for it. */
    private Tally askQuietly(String label) throws IOException, InterruptedException {
        for (int tries = 1;; tries++) {
            Processor processor = new Processor(service);
            Tally quiet = good.ask(QUIET_SECONDS).tally();
            if (quiet.answers() == quiet.of(200) && quiet.cutOffs() == 0) {
                return quiet;
            }
            if (tries == MOST_PAIRS || !service.isAlive()) {
                holds(false, label, text("without an attack %s and %d cut off; others take %.0f %% of the processor", quiet,
                        quiet.cutOffs(), 100 * processor.othersShare()));
                return quiet;
            }
            Thread.sleep(2_000);
        }
    }

    /** What the well-behaved caller got that it is not owed. */
    private static List<String> felt(Owed owed, Tally good) {
        List<String> felt = new ArrayList<>();
        if (good.cutOffs() > 0) {
            felt.add(good.cutOffs() + " calls of the well-behaved caller got no answer");
        }
        if (good.of(200) + (owed == Owed.ANSWERS_OR_REFUSALS ? good.of(503) : 0) < Math.max(1, good.answers())) {
            felt.add("the well-behaved caller got " + good + " " + good.strangeAnswers().stream().limit(1).toList());
        }
        if (good.refusalsWithoutRetry() > 0) {
            felt.add("the well-behaved caller is refused without Retry-After");
        }
        return felt;
    }

    private static String text(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    private static void print(String label, Tally attack, Tally good, Service.State state, double processorSeconds, String times) {
        System.out.printf(Locale.ROOT, ROW, label, attack, attack.cutOffs(),
                good + (good.cutOffs() == 0 ? "" : " " + good.cutOffs() + " cut off"),
                state == null ? "-" : text("%.1f", state.heapBytes() / 1e6),
                Double.isNaN(processorSeconds) ? "-" : text("%.1f", processorSeconds),
                state == null ? "-" : state.threads(), state == null ? "-" : state.descriptors(), times);
    }

    /** Prints a row of what no well-behaved caller is beside. */
    static void printOnly(String label, Tally tally) {
        System.out.printf(ROW, label, tally, tally.cutOffs(), "-", "-", "-", "-", "-", "-");
    }

    /** Requests that do not come whole must be ended when their time is over, with an answer or without. */
    void judgeEnded(String label, Outcome outcome, double limitSeconds) {
        List<Scripts.InParts> all = outcome.attack().inParts();
        double mostSeconds = limitSeconds
                + Math.max(Lab.TOLERANCE_SECONDS, MOST_TIMES_QUIET_TO_END * outcome.quietMillis() / 1e3);
        long late = all.stream().filter(each -> !each.hasEnded() || each.seconds() > mostSeconds).count();
        holds(late == 0, label, late + " of " + all.size() + " were not ended after " + mostSeconds + " s");
    }

    void holds(boolean holds, String label, String otherwise) {
        if (!holds) {
            lab.breach(true, trial + ": " + label + ": " + otherwise);
        }
    }
}
