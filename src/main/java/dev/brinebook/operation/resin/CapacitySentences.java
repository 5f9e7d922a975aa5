package dev.brinebook.operation.resin;

import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.wording.Message;
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

    static Message of(List<CapacityPoint> points, ChartedColumn column, List<EfficiencyLineReach> lines) {
        List<CapacityPoint> rising = points.stream().sorted(BY_DOSE).toList();
        Message table = byTable(rising);
        List<Message> sentences = new ArrayList<>();
        if (column.reason() != null) {
            sentences.add(Message.of("{0}; the column gives nothing, since {1}.", table, column.why()));
        } else {
            List<CapacityPoint> held = rising.stream().filter(point -> point.column().capacity() != null).toList();
            sentences.add(byColumn(table, rising, held));
            leakage(column, held.size() == rising.size()).ifPresent(sentences::add);
        }
        sentences.add(reach(lines));
        return Message.joined(" ", sentences);
    }

    private static Message byTable(List<CapacityPoint> rising) {
        CapacityPoint low = rising.get(0);
        CapacityPoint high = rising.get(rising.size() - 1);
        Message capacity = Text.span(low.workingTable().capacity(), high.workingTable().capacity());
        return low.saltDose().equals(high.saltDose())
                ? Message.of("At {0} the working table gives {1}", Text.of(low.saltDose()), capacity)
                : Message.of("From {0} the working table gives {1}", Text.span(low.saltDose(), high.saltDose()), capacity);
    }

    private static Message byColumn(Message table, List<CapacityPoint> rising, List<CapacityPoint> held) {
        if (held.isEmpty()) {
            return Message.of("{0}; in this water none of these doses is of use.", table);
        }
        CapacityPoint low = held.get(0);
        Message capacity = Text.span(low.column().capacity(), held.get(held.size() - 1).column().capacity());
        return held.size() == rising.size() ? Message.of("{0}, the column in this water {1}.", table, capacity)
                : Message.of("{0}, the column in this water {1} from {2} on.", table, capacity, Text.of(low.saltDose()));
    }

    private static Optional<Message> leakage(ChartedColumn column, boolean allHeld) {
        SaltDoseQuantity least = column.leastSaltDose().saltDose();
        Message end = Text.of(column.endPoint());
        if (least == null) {
            return Optional.of(Message.of("No dose keeps the leakage below {0}.", end));
        }
        return allHeld ? Optional.empty()
                : Optional.of(Message.of("Below {0} more than {1} leaks through.", Text.of(least), end));
    }

    /** What the strictest line that is reached at all allows. */
    private static Message reach(List<EfficiencyLineReach> lines) {
        return lines.stream().filter(line -> isReached(line.workingTable()) || isReached(line.column()))
                .max(Comparator.comparingDouble(line -> line.leastSaltEfficiency().inBase()))
                .map(CapacitySentences::reach)
                .orElse(Message.of("No published efficiency line is reached at any dose."));
    }

    private static Message reach(EfficiencyLineReach line) {
        Message efficiency = Text.of(line.leastSaltEfficiency());
        Message table = highest(line.workingTable());
        return line.column() == null
                ? Message.of("A published efficiency line, {0}, is reached {1} by the working table.", efficiency, table)
                : Message.of("A published efficiency line, {0}, is reached {1} by the working table and {2} by the column.",
                        efficiency, table, highest(line.column()));
    }

    private static boolean isReached(SaltDoseFigure highest) {
        return highest != null && highest.saltDose() != null;
    }

    private static Message highest(SaltDoseFigure highest) {
        return highest.saltDose() == null ? Message.of("at no dose") : Message.of("up to {0}", Text.of(highest.saltDose()));
    }
}
