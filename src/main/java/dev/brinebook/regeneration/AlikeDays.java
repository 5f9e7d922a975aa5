// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

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
    /** Litres that differ by less than this share of the largest mean are treated as equal. */
    private static final double EQUAL_SHARE = 1e-4;
    /** Most bins over the whole range of use: values in one bin are merged into their mean. */
    private static final int MOST_BINS = 250;

    /** Litres used so far and their chance, added up so that equal ones come together. */
    private static final class Spread {

        private final double binLitres;
        private final double[] chances;
        private final double[] litresTimesChance;
        /** Bins that hold anything; none while the last is before the first. */
        private int first;
        private int last;

        Spread(double mostLitres, double binLitres) {
            this.binLitres = binLitres;
            chances = new double[(int) Math.ceil(mostLitres / binLitres) + 2];
            litresTimesChance = new double[chances.length];
            clear();
        }

        void clear() {
            for (int i = first; i <= last; i++) {
                chances[i] = 0;
                litresTimesChance[i] = 0;
            }
            first = chances.length;
            last = -1;
        }

        void add(double litres, double chance) {
            if (chance > 0) {
                int bin = Math.min(chances.length - 1, (int) Math.round(litres / binLitres));
                chances[bin] += chance;
                litresTimesChance[bin] += chance * litres;
                first = Math.min(first, bin);
                last = Math.max(last, bin);
            }
        }

        void addAll(Spread other, double share) {
            for (int i = other.first; i <= other.last; i++) {
                if (other.chances[i] > 0) {
                    add(other.litres(i), share * other.chances[i]);
                }
            }
        }

        double litres(int bin) {
            return litresTimesChance[bin] / chances[bin];
        }

        double sum() {
            double sum = 0;
            for (int i = first; i <= last; i++) {
                sum += chances[i];
            }
            return sum;
        }
    }

    private double largestMean() {
        double largest = 0;
        for (double mean : means) {
            largest = Math.max(largest, mean);
        }
        return largest;
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
        double largest = largestMean();
        double most = largest + (rule.timed() ? largest * longest : rule.callLitres());
        // Without absences there is only one sum after each night.
        double bin = Math.max(Double.MIN_NORMAL, leave > 0 ? Math.max(EQUAL_SHARE * largest, most / MOST_BINS) : 2 * most);
        Spread home = new Spread(most, bin);
        Spread away = new Spread(most, bin);
        Spread homeToday = new Spread(most, bin);
        Spread awayToday = new Spread(most, bin);
        (state < WEEKDAYS ? home : away).add(0, 1);
        for (int n = 1; n <= WaitingRule.MOST_NIGHTS; n++) {
            double mean = means[(weekday + n - 1) % WEEKDAYS];
            boolean overridden = n == longest;
            boolean last = overridden || n == WaitingRule.MOST_NIGHTS;
            homeToday.clear();
            homeToday.addAll(home, 1 - leave);
            homeToday.addAll(away, comeBack);
            awayToday.clear();
            awayToday.addAll(home, leave);
            awayToday.addAll(away, leave > 0 ? 1 - comeBack : 0);
            double before = home.sum() + away.sum();
            home.clear();
            double hard = 0;
            double litres = 0;
            for (int i = homeToday.first; i <= homeToday.last; i++) {
                double chance = homeToday.chances[i];
                if (chance > 0) {
                    double earlier = homeToday.litres(i);
                    double now = earlier + mean;
                    if (mean > 0 && now > rule.bedLitres() * (1 + Policy.ROUNDING_SHARE)) {
                        hard += chance;
                        litres += chance * (now - Math.max(earlier, rule.bedLitres()));
                    }
                    if (rule.timed() || now < rule.callLitres() - rule.roundingLitres()) {
                        home.add(now, chance);
                    }
                }
            }
            double waits = home.sum();
            double awayNow = awayToday.sum();
            double endHome = homeToday.sum() - (last ? 0 : waits);
            cycles.add(state, before, litres, overridden && !rule.byClock()[weekday] ? waits + awayNow : 0,
                    hard, single ? hard : 0, single ? endHome - hard : endHome, last ? awayNow : 0);
            away.clear();
            away.addAll(awayToday, 1);
            if (last || waits + awayNow < ENDED) {
                return;
            }
        }
    }
}
