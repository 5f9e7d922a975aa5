// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.chemistry;

/** The rules in print by which a balance of charges is accepted. Each computes its own figure: their percentages are not one scale. */
public enum BalanceCriterion {
    /**
     * Difference up to 0.2 meq/L where the anions are at most 3 meq/L, 2 % of the sum up to 10 meq/L, 5 % above.
     * Source: [SM1030E], from memory.
     */
    STANDARD_METHODS {
        @Override
        public Verdict of(ChargeBalance balance) {
            double anions = balance.anionsMeqPerL();
            boolean passes = anions <= 3 ? Math.abs(balance.differenceMeqPerL()) <= 0.2
                    : Math.abs(balance.percent()) <= (anions <= 10 ? 2 : 5);
            return passes ? Verdict.PASSES : Verdict.FAILS;
        }
    },
    /**
     * The difference against half the sum, which doubles the figure: up to 5 % where both sums are at most 2 meq/L, 2 % above.
     * Source: [DVWK-128].
     */
    HALF_SUM {
        @Override
        public Verdict of(ChargeBalance balance) {
            boolean dilute = Math.max(balance.cationsMeqPerL(), balance.anionsMeqPerL()) <= 2;
            return Math.abs(figurePercent(balance)) <= (dilute ? 5 : 2) ? Verdict.PASSES : Verdict.FAILS;
        }

        @Override
        public double figurePercent(ChargeBalance balance) {
            return 2 * balance.percent();
        }
    },
    /**
     * Good up to 5 % of the sum or 0.2 meq/L, doubtful up to 10 %. In a survey of 1,062 published analyses the mean was 4 %.
     * Source: [FRITZ-1994].
     */
    PRACTICE {
        @Override
        public Verdict of(ChargeBalance balance) {
            double percent = Math.abs(balance.percent());
            return percent <= 5 || Math.abs(balance.differenceMeqPerL()) <= 0.2 ? Verdict.PASSES
                    : percent <= 10 ? Verdict.DOUBTFUL : Verdict.FAILS;
        }
    };

    /** What a rule says of a balance. */
    public enum Verdict {
        PASSES, DOUBTFUL, FAILS
    }

    /** What the rule says. */
    public abstract Verdict of(ChargeBalance balance);

    /** The figure that the rule looks at, %. */
    public double figurePercent(ChargeBalance balance) {
        return balance.percent();
    }
}
