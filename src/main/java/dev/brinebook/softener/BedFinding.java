// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.regeneration.BackwashFlow;
import dev.brinebook.regeneration.CycleFinding;
import dev.brinebook.resin.BackwashEffect;
import dev.brinebook.resin.ServiceFlow;
import dev.brinebook.text.Localizable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** A fault of a bed for its duty, with the sentence that describes it. */
public enum BedFinding implements Localizable {
    BED_TOO_SHALLOW(null),
    FREEBOARD_BELOW_GUIDE(CycleFinding.FREEBOARD_BELOW_GUIDE),
    NO_ROOM_FOR_TARGET(null),
    BACKWASH_CARRIES_RESIN_OUT(CycleFinding.BACKWASH_CARRIES_RESIN_OUT),
    BACKWASH_ABOVE_ROOM(CycleFinding.BACKWASH_ABOVE_ROOM),
    BACKWASH_TOO_WEAK(CycleFinding.BACKWASH_TOO_WEAK),
    BACKWASH_BELOW_TARGET(null),
    SUPPLY_BELOW_DRAIN_FLOW(CycleFinding.SUPPLY_BELOW_DRAIN_FLOW),
    DRAIN_LINE_BELOW_DRAIN_FLOW(CycleFinding.DRAIN_LINE_BELOW_DRAIN_FLOW),
    SERVICE_FLOW_TOO_HIGH(null),
    SERVICE_FLOW_TOO_HIGH_WITH_CRUSHED_BEADS(null),
    SERVICE_FLOW_FINDS_CHANNELS(null),
    PEAK_FLOW_TOO_HIGH(null),
    PEAK_FLOW_TOO_HIGH_WITH_CRUSHED_BEADS(null);

    private final CycleFinding same;

    /** @param same what a cycle finds wrong too, in the same words; null where only the bed is reviewed */
    BedFinding(CycleFinding same) {
        this.same = same;
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

    @Override
    public String textId() {
        return same == null ? Localizable.idOf("bedFinding", this) : same.textId();
    }
}
