// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import java.util.List;

/**
 * Block tariff of water: the first cubic metres of a year at one price, the next at another.
 *
 * <p>A softener's water comes on top of the household's, so it is charged at the prices of the blocks that it falls in.
 *
 * @param blocks the blocks, in order; the last has no end
 */
public record WaterTariff(List<Block> blocks) {

    public static final int MAX_BLOCKS = 10;
    /** Of the household and the softener together; a softener at the limits of its inputs uses much. */
    public static final double MAX_CUBIC_METRES = 1e9;

    /**
     * Water up to an amount.
     *
     * @param upToCubicMetresPerYear end of the block, infinite for the last
     * @param perCubicMetre price in it
     */
    public record Block(double upToCubicMetresPerYear, double perCubicMetre) {

        public Block {
            if (!(upToCubicMetresPerYear > 0)) {
                throw new IllegalArgumentException("upToCubicMetresPerYear must be above 0, was " + upToCubicMetresPerYear);
            }
            Guard.within(perCubicMetre, 0, Prices.MAX_PRICE, "perCubicMetre");
        }
    }

    public WaterTariff {
        blocks = List.copyOf(blocks);
        Guard.within(blocks.size(), 1, MAX_BLOCKS, "number of blocks");
        for (int i = 1; i < blocks.size(); i++) {
            double before = blocks.get(i - 1).upToCubicMetresPerYear();
            if (!(blocks.get(i).upToCubicMetresPerYear() > before)) {
                throw new IllegalArgumentException("blocks must end one after the other");
            }
        }
        if (blocks.get(blocks.size() - 1).upToCubicMetresPerYear() != Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException("the last block must have no end");
        }
    }

    /** One price for all. */
    public static WaterTariff flat(double perCubicMetre) {
        return new WaterTariff(List.of(new Block(Double.POSITIVE_INFINITY, perCubicMetre)));
    }

    /**
     * Cost of a year's water.
     *
     * <pre>c = Σ p_i · (min(V, e_i) − e_i₋₁)   over the blocks that V reaches</pre>
     *
     * <p>c cost, in the currency of the prices; V water of the year, m³; p_i price per m³ and e_i end, m³, of block i, e_0 = 0.
     * Validity: V from 0 to {@value #MAX_CUBIC_METRES}.
     * Source: what a block tariff is, by definition.
     * Deviation: none.
     */
    public double yearlyCost(double cubicMetres) {
        Guard.within(cubicMetres, 0, MAX_CUBIC_METRES, "cubicMetres");
        double cost = 0;
        double from = 0;
        for (int i = 0; i < blocks.size(); i++) {
            Block block = blocks.get(i);
            double inBlock = Math.min(cubicMetres, block.upToCubicMetresPerYear()) - from;
            if (!(inBlock > 0)) {
                break;
            }
            cost += inBlock * block.perCubicMetre();
            from = block.upToCubicMetresPerYear();
        }
        return cost;
    }

    /**
     * Cost that a softener's water adds to the bill of a household.
     *
     * <pre>Δc = c(H + V) − c(H)</pre>
     *
     * <p>c {@link #yearlyCost}; H water of the household and V of the softener, m³ per year.
     * Validity: H + V up to {@value #MAX_CUBIC_METRES}.
     * Source: what a block tariff is, by definition.
     * Deviation: none.
     */
    public double addedCost(double householdCubicMetres, double softenerCubicMetres) {
        Guard.within(softenerCubicMetres, 0, MAX_CUBIC_METRES, "softenerCubicMetres");
        return yearlyCost(householdCubicMetres + softenerCubicMetres) - yearlyCost(householdCubicMetres);
    }
}
