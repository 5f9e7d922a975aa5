package dev.brinebook.resin.api;

import dev.brinebook.api.Text;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.api.SaltDoseQuantity;
import java.util.Comparator;
import java.util.List;

/** The summary of a capacity chart. */
final class CapacitySentences {

    private static final Comparator<CapacityPoint> BY_DOSE = Comparator.comparingDouble(
            point -> point.saltDose().inBase());

    private CapacitySentences() {
    }

    static String of(List<CapacityPoint> points, ChartedColumn column, List<EfficiencyLineReach> lines) {
        List<CapacityPoint> rising = points.stream().sorted(BY_DOSE).toList();
        CapacityPoint low = rising.get(0);
        CapacityPoint high = rising.get(rising.size() - 1);
        String table = (low.saltDose().equals(high.saltDose()) ? "At " : "From ") + span(low.saltDose(), high.saltDose())
                + " the working table gives " + span(low.workingTable().capacity(), high.workingTable().capacity());
        return table + (column.reason() != null ? "; the column gives nothing, since " + column.why() + "."
                : inThisWater(rising, column)) + " " + reach(lines);
    }

    private static String inThisWater(List<CapacityPoint> rising, ChartedColumn column) {
        List<CapacityPoint> held = rising.stream().filter(point -> point.column().capacity() != null).toList();
        String gives = held.isEmpty() ? "; in this water none of these doses is of use."
                : ", the column in this water " + span(held.get(0).column().capacity(),
                        held.get(held.size() - 1).column().capacity()) + (held.size() == rising.size() ? "."
                        : " from " + Text.of(held.get(0).saltDose()) + " on.");
        SaltDoseFigure least = column.leastSaltDose();
        return gives + (least.saltDose() == null ? " No dose keeps the leakage below " + Text.of(column.endPoint()) + "."
                : held.size() == rising.size() ? "" : " Below " + Text.of(least.saltDose()) + " more than "
                        + Text.of(column.endPoint()) + " leaks through.");
    }

    /** What the strictest line that is reached at all allows. */
    private static String reach(List<EfficiencyLineReach> lines) {
        return lines.stream().filter(line -> isReached(line.workingTable()) || isReached(line.column()))
                .max(Comparator.comparingDouble(line -> line.leastSaltEfficiency().inBase()))
                .map(line -> "A published efficiency line, " + Text.of(line.leastSaltEfficiency()) + ", is reached "
                        + words(line.workingTable()) + " by the working table" + (line.column() == null ? "."
                        : " and " + words(line.column()) + " by the column."))
                .orElse("No published efficiency line is reached at any dose.");
    }

    private static boolean isReached(SaltDoseFigure highest) {
        return highest != null && highest.saltDose() != null;
    }

    private static String words(SaltDoseFigure highest) {
        SaltDoseQuantity dose = highest.saltDose();
        return dose == null ? "at no dose" : "up to " + Text.of(dose);
    }

    private static String span(Quantity<?> low, Quantity<?> high) {
        return low.equals(high) ? Text.of(low).toString() : Text.number(low.value().doubleValue()) + " to " + Text.of(high);
    }
}
