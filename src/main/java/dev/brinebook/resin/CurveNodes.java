// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.resin.ColumnResult.Settled;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * Columns with whole numbers of shifts of brine, in one resin and one water. Each starts from the bed that those before let expect at
 * its dose.
 */
final class CurveNodes {

    private final CyclicColumn column;
    private final double brineBedVolumesPerShift;
    private final double gramsPerShift;
    /** By shifts of brine. */
    private final NavigableMap<Integer, Settled> cycles = new TreeMap<>();
    private final NavigableMap<Integer, StagedBed> beds = new TreeMap<>();

    CurveNodes(CurveCase of, Brining most) {
        column = new CyclicColumn(of.resin(), of.water(), most, of.endPointMgPerL(), CyclicColumn.FRONT_STEP);
        brineBedVolumesPerShift = of.resin().voidShare() / of.resin().stages();
        gramsPerShift = most.saltDoseGramsPerLitre() / most.brineBedVolumes() * brineBedVolumesPerShift;
    }

    /** Salt in one shift of brine, in grams per litre of resin. */
    double gramsPerShift() {
        return gramsPerShift;
    }

    /** The columns that hold the end point, by the salt dose in grams per litre of resin. */
    NavigableMap<Double, Settled> settled() {
        NavigableMap<Double, Settled> byDose = new TreeMap<>();
        cycles.forEach((shifts, cycle) -> byDose.put(shifts * gramsPerShift, cycle));
        return byDose;
    }

    /** Least number of shifts from {@code first} on that holds the end point, where {@code last} does; found by halving. */
    int lowestHeld(int first, int last) {
        int held = last;
        int fails = first - 1;
        while (held - fails > 1) {
            int tried = fails < first ? first : (fails + held) / 2;
            if (holds(tried)) {
                held = tried;
            } else {
                fails = tried;
            }
        }
        return held;
    }

    /** Calculates up to {@code count} columns near the nodes of Chebyshev over the logarithm of the shifts, coarse ones first. */
    void fill(int lowest, int last, int count) {
        int intervals = Math.min(count, last - lowest + 1) - 1;
        for (int stride = Integer.highestOneBit(Math.max(1, intervals)); stride > 0; stride /= 2) {
            for (int i = stride; i < intervals; i += stride) {
                double share = 0.5 * (1 - StrictMath.cos(StrictMath.PI * i / intervals));
                int node = (int) StrictMath.rint(lowest * StrictMath.pow((double) last / lowest, share));
                holds(Math.max(lowest + i, Math.min(last - (intervals - i), node)));
            }
        }
    }

    /** Whether the end point is held with so many shifts of brine. Not to be asked of more than are known to hold it. */
    boolean holds(int shifts) {
        if (beds.containsKey(shifts)) {
            return true;
        }
        StagedBed cleaner = beds.isEmpty() ? column.state() : beds.ceilingEntry(shifts).getValue();
        double expected = beds.size() < 2 ? 0 : expect(shifts);
        if (column.settle(shifts * brineBedVolumesPerShift, cleaner, expected) instanceof Settled cycle) {
            cycles.put(shifts, cycle);
            beds.put(shifts, column.state());
            return true;
        }
        column.startFrom(cleaner);
        return false;
    }

    /** Makes the bed what the polynomial through the known ones gives, and returns the capacity from the same; 0 where it gives none. */
    private double expect(int shifts) {
        Integer[] known = beds.keySet().toArray(new Integer[0]);
        double[] weights = new double[known.length];
        double expected = 0;
        for (int k = 0; k < known.length; k++) {
            weights[k] = 1;
            for (int other : known) {
                weights[k] *= other == known[k] ? 1
                        : StrictMath.log((double) shifts / other) / StrictMath.log((double) known[k] / other);
            }
            expected += weights[k] * cycles.get(known[k]).capacityEquivalentsPerLitre();
        }
        if (column.startFrom(beds.values().toArray(new StagedBed[0]), weights)) {
            return expected;
        }
        column.startFrom(beds.ceilingEntry(shifts).getValue());
        return 0;
    }
}
