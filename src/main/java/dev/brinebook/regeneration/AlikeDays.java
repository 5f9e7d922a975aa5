package dev.brinebook.regeneration;

import java.util.Map;
import java.util.TreeMap;

/**
 * The cycles of a household whose days hardly scatter: each day at home uses the mean of its weekday, so the litres after each
 * number of days are few, and are gone through one by one.
 *
 * @param means mean use of each weekday at home, litres, Monday first
 * @param leave probability that a house at home is vacant the next day
 * @param comeBack probability that a vacant house is at home the next day
 */
record AlikeDays(double[] means, double leave, double comeBack) {

    private static final int WEEKDAYS = 7;
    private static final double ENDED = 1e-13;
    private static final int MOST_NIGHTS = 40_000;
    /** Litres that differ by less than this share of the largest mean count as equal. */
    private static final double EQUAL_SHARE = 1e-4;

    /** Litres and their chance, added up so that equal ones come together. */
    private final class Spread {
        private final Map<Long, double[]> chances = new TreeMap<>();

        void add(double litres, double chance) {
            if (chance > 0) {
                double[] at = chances.computeIfAbsent(Math.round(litres / bin()), key -> new double[2]);
                at[0] += chance;
                at[1] += chance * litres;
            }
        }

        void addAll(Spread other, double share) {
            other.chances.values().forEach(at -> add(at[1] / at[0], share * at[0]));
        }

        double sum() {
            return chances.values().stream().mapToDouble(at -> at[0]).sum();
        }
    }

    private double bin() {
        double largest = 0;
        for (double mean : means) {
            largest = Math.max(largest, mean);
        }
        return EQUAL_SHARE * largest;
    }

    /** All cycles of a rule. */
    Cycles cycles(WaitingRule rule) {
        Cycles cycles = new Cycles(WEEKDAYS, leave > 0 ? 2 : 1, true);
        for (int state = 0; state < cycles.states(); state++) {
            run(rule, cycles, state);
        }
        return cycles;
    }

    private void run(WaitingRule rule, Cycles cycles, int state) {
        int weekday = state % WEEKDAYS;
        int longest = rule.longestNights()[weekday];
        boolean single = !rule.timed() && rule.callLitres() <= rule.bedLitres();
        Spread home = new Spread();
        Spread away = new Spread();
        (state < WEEKDAYS ? home : away).add(0, 1);
        for (int n = 1; n <= MOST_NIGHTS; n++) {
            double mean = means[(weekday + n - 1) % WEEKDAYS];
            boolean last = n == longest;
            Spread homeToday = new Spread();
            homeToday.addAll(home, 1 - leave);
            homeToday.addAll(away, comeBack);
            Spread awayToday = new Spread();
            awayToday.addAll(home, leave);
            awayToday.addAll(away, leave > 0 ? 1 - comeBack : 0);
            double before = home.sum() + away.sum();
            Spread waits = new Spread();
            double hard = 0;
            double litres = 0;
            for (double[] at : homeToday.chances.values()) {
                double earlier = at[1] / at[0];
                double now = earlier + mean;
                if (mean > 0 && now > rule.bedLitres() * (1 + Policy.ROUNDING_SHARE)) {
                    hard += at[0];
                    litres += at[0] * (now - Math.max(earlier, rule.bedLitres()));
                }
                if (rule.timed() || now < rule.callLitres() - rule.roundingLitres()) {
                    waits.add(now, at[0]);
                }
            }
            double endHome = homeToday.sum() - (last ? 0 : waits.sum());
            cycles.add(state, before, litres, last && !rule.byClock()[weekday] ? waits.sum() + awayToday.sum() : 0,
                    hard, single ? hard : 0, single ? endHome - hard : endHome, last ? awayToday.sum() : 0);
            home = waits;
            away = awayToday;
            if (last || home.sum() + away.sum() < ENDED) {
                return;
            }
        }
    }
}
