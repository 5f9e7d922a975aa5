package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.regeneration.BackwashFlow;
import dev.brinebook.regeneration.CycleFinding;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.resin.ServiceFlow;
import dev.brinebook.wording.Worded;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** What is wrong with a bed for what it is asked to do, with the sentence that says so. */
public enum BedFinding implements Worded {
    BED_TOO_SHALLOW("The bed is less than 24 inches deep, the least that the guide asks for: hardness can break through"
            + " early.", "The bed is less than 61 cm deep, the least that the guide asks for: hardness can break through"
            + " early."),
    FREEBOARD_BELOW_GUIDE(CycleFinding.FREEBOARD_BELOW_GUIDE),
    NO_ROOM_FOR_TARGET("The tank has no room above the bed for the expansion that is aimed at."),
    BACKWASH_CARRIES_RESIN_OUT(CycleFinding.BACKWASH_CARRIES_RESIN_OUT),
    BACKWASH_ABOVE_ROOM(CycleFinding.BACKWASH_ABOVE_ROOM),
    BACKWASH_TOO_WEAK(CycleFinding.BACKWASH_TOO_WEAK),
    BACKWASH_BELOW_TARGET("The backwash lifts the bed by less than is aimed at."),
    SUPPLY_BELOW_DRAIN_FLOW(CycleFinding.SUPPLY_BELOW_DRAIN_FLOW),
    DRAIN_LINE_BELOW_DRAIN_FLOW(CycleFinding.DRAIN_LINE_BELOW_DRAIN_FLOW),
    SERVICE_FLOW_TOO_HIGH("The service flow is more than the bed takes all day."),
    SERVICE_FLOW_TOO_HIGH_WITH_CRUSHED_BEADS("The service flow is more than the bed takes all day once the beads are"
            + " crushed: it then loses more than 15 psi.", "The service flow is more than the bed takes all day once the beads"
            + " are crushed: it then loses more than 103 kPa."),
    SERVICE_FLOW_FINDS_CHANNELS("The service flow is slower than 1 gpm per cubic foot of resin: it can run through channels"
            + " and leave part of the bed unused.", "The service flow is slower than 8 bed volumes an hour: it can run through"
            + " channels and leave part of the bed unused."),
    PEAK_FLOW_TOO_HIGH("The peak flow is more than the bed takes even for a short time."),
    PEAK_FLOW_TOO_HIGH_WITH_CRUSHED_BEADS("The peak flow is more than the bed takes once the beads are crushed: it then"
            + " loses more than 15 psi.", "The peak flow is more than the bed takes once the beads are crushed: it then loses"
            + " more than 103 kPa.");

    private final String words;
    private final String metricWords;

    BedFinding(String words, String metricWords) {
        this.words = words;
        this.metricWords = metricWords;
    }

    BedFinding(String words) {
        this(words, words);
    }

    /** The same as a finding of the cycle, of the same name. */
    BedFinding(CycleFinding same) {
        this(same.words());
    }

    @Override
    public String words() {
        return words;
    }

    @Override
    public String metricWords() {
        return metricWords;
    }

    /** Everything found, in the order above. The drain line flow control is judged, or where unknown the one to choose. */
    public static List<BedFinding> of(BedHydraulics hydraulics, BedDuty duty) {
        double target = duty.targetExpansionShare();
        BackwashFlow flow = hydraulics.backwashFlow(duty);
        BackwashEffect backwash = hydraulics.backwash(flow.litresPerMinute());
        List<BedFinding> found = new ArrayList<>();
        CycleFinding.ofBackwash(backwash, flow.rule()).forEach(same -> found.add(valueOf(same.name())));
        add(found, !hydraulics.bed().hasGuideDepth(), BED_TOO_SHALLOW);
        add(found, !hydraulics.hasRoomFor(target), NO_ROOM_FOR_TARGET);
        add(found, !Guard.isWithin(flow.litresPerMinute(), hydraulics.backwashLitresPerMinute(target), Double.MAX_VALUE)
                && !backwash.isWeak(), BACKWASH_BELOW_TARGET);
        addService(found, hydraulics, duty.serviceLitresPerMinute());
        addPeak(found, hydraulics, duty.peakLitresPerMinute());
        return Arrays.stream(values()).filter(found::contains).toList();
    }

    private static void addService(List<BedFinding> found, BedHydraulics hydraulics, OptionalDouble service) {
        service.ifPresent(flow -> {
            boolean clean = isAbove(flow, hydraulics.cleanContinuousBounds());
            add(found, clean, SERVICE_FLOW_TOO_HIGH);
            add(found, !clean && isAbove(flow, hydraulics.crushedContinuousBounds()),
                    SERVICE_FLOW_TOO_HIGH_WITH_CRUSHED_BEADS);
            add(found, !Guard.isWithin(hydraulics.bed().bedVolumesPerHour(flow),
                    ServiceFlow.GUIDE_LOW_BED_VOLUMES_PER_HOUR, Double.MAX_VALUE), SERVICE_FLOW_FINDS_CHANNELS);
        });
    }

    private static void addPeak(List<BedFinding> found, BedHydraulics hydraulics, OptionalDouble peak) {
        peak.ifPresent(flow -> {
            boolean clean = isAbove(flow, hydraulics.cleanPeakBounds());
            add(found, clean, PEAK_FLOW_TOO_HIGH);
            add(found, !clean && isAbove(flow, hydraulics.crushedPeakBounds()), PEAK_FLOW_TOO_HIGH_WITH_CRUSHED_BEADS);
        });
    }

    private static boolean isAbove(double flow, List<ServiceFlow.Bound> bindingFirst) {
        return !Guard.isWithin(flow, 0, bindingFirst.get(0).flowLitresPerMinute());
    }

    private static void add(List<BedFinding> found, boolean applies, BedFinding finding) {
        if (applies) {
            found.add(finding);
        }
    }
}
