// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.text.Message;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The summary of a capacity chart. */
final class CapacitySentences {

    private static final Comparator<CapacityPoint> BY_DOSE = Comparator.comparingDouble(
            point -> point.saltDose().inBase());

    private CapacitySentences() {
    }

    static Message of(List<CapacityPoint> points, ChartedColumn column, List<EfficiencyLineReach> lines, Explanation explanation) {
        List<CapacityPoint> rising = points.stream().sorted(BY_DOSE).toList();
        List<Message> sentences = new ArrayList<>(List.of(byTable(rising)));
        if (column.reason() != null) {
            sentences.add(Message.of("capacity.equilibriumColumnGivesNo"));
            sentences.add(column.why());
        } else {
            List<CapacityPoint> held = rising.stream().filter(point -> point.column().capacity() != null).toList();
            sentences.add(byColumn(rising, held));
            leakage(column, held.size() == rising.size(), explanation).ifPresent(sentences::add);
        }
        sentences.add(reach(lines));
        return Message.sentences(sentences);
    }

    private static Message byTable(List<CapacityPoint> rising) {
        CapacityPoint low = rising.get(0);
        CapacityPoint high = rising.get(rising.size() - 1);
        Message capacity = Text.roundedSpan(low.workingTable().capacity(), high.workingTable().capacity());
        return low.saltDose().equals(high.saltDose())
                ? Message.of("capacity.saltDoseWorkingTable", Text.rounded(low.saltDose()), capacity)
                : Message.of("capacity.saltDosesWorkingTable", Text.roundedSpan(low.saltDose(), high.saltDose()), capacity);
    }

    private static Message byColumn(List<CapacityPoint> rising, List<CapacityPoint> held) {
        if (held.isEmpty()) {
            return Message.of("capacity.waterNoneTheseDoses");
        }
        CapacityPoint low = held.get(0);
        Message capacity = Text.roundedSpan(low.column().capacity(), held.get(held.size() - 1).column().capacity());
        return held.size() == rising.size() ? Message.of("capacity.equilibriumColumnWaterGives", capacity)
                : Message.of("capacity.equilibriumColumnWaterGivesDose", capacity, Text.rounded(low.saltDose()));
    }

    private static Optional<Message> leakage(ChartedColumn column, boolean allHeld, Explanation explanation) {
        SaltDoseQuantity least = column.leastSaltDose().saltDose();
        Message end = Text.rounded(HardnessQuantity.forReader(column.endPoint().inBase(), explanation));
        if (least == null) {
            return Optional.of(Message.of("capacity.noDoseKeepsLeakage", end));
        }
        return allHeld ? Optional.empty()
                : Optional.of(Message.of("capacity.belowMoreThanLeaks", Text.rounded(least), end));
    }

    /** Highest dose that meets the strictest limit met by any dose. */
    private static Message reach(List<EfficiencyLineReach> lines) {
        return lines.stream().filter(line -> isReached(line.workingTable()) || isReached(line.column()))
                .max(Comparator.comparingDouble(line -> line.leastSaltEfficiency().inBase()))
                .map(CapacitySentences::reach)
                .orElse(Message.of("capacity.noDoseReachesPublished"));
    }

    private static Message reach(EfficiencyLineReach line) {
        Message efficiency = Text.rounded(line.leastSaltEfficiency());
        if (line.column() == null) {
            return Message.of("capacity.workingTableReachesPublished", efficiency, highest(line.workingTable()));
        }
        String reachedBy = !isReached(line.column()) ? "table" : isReached(line.workingTable()) ? "both" : "column";
        return Message.of("capacity.workingTableReachesPublishedEfficiency", efficiency, reachedBy, highest(line.workingTable()),
                highest(line.column()));
    }

    private static boolean isReached(SaltDoseFigure highest) {
        return highest != null && highest.saltDose() != null;
    }

    private static Message highest(SaltDoseFigure highest) {
        return isReached(highest) ? Text.rounded(highest.saltDose()) : Message.verbatim("");
    }
}
