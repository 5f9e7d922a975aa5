// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.ServiceFlow;
import java.util.function.ToDoubleFunction;

/** Where a flow of the table comes from; the flows of the guides follow from the bed. */
public enum BedFlowOrigin {
    SERVICE_FLOW(null),
    PEAK_FLOW(null),
    GUIDE_LOW_VELOCITY(bed -> bed.flowLitresPerMinute(ServiceFlow.GUIDE_LOW_VELOCITY_METRES_PER_HOUR)),
    GUIDE_HIGH_VELOCITY(bed -> bed.flowLitresPerMinute(ServiceFlow.GUIDE_HIGH_VELOCITY_METRES_PER_HOUR)),
    GUIDE_LOW_FLOW_PER_RESIN(bed -> bed.flowLitresPerMinuteOfBedVolumes(ServiceFlow.GUIDE_LOW_BED_VOLUMES_PER_HOUR)),
    GUIDE_HIGH_FLOW_PER_RESIN(bed -> bed.flowLitresPerMinuteOfBedVolumes(ServiceFlow.GUIDE_HIGH_BED_VOLUMES_PER_HOUR)),
    GUIDE_PEAK_FLOW_PER_RESIN(bed -> bed.flowLitresPerMinuteOfBedVolumes(ServiceFlow.GUIDE_PEAK_BED_VOLUMES_PER_HOUR));

    private final ToDoubleFunction<ResinBed> guide;

    BedFlowOrigin(ToDoubleFunction<ResinBed> guide) {
        this.guide = guide;
    }

    boolean isGuide() {
        return guide != null;
    }

    double flowLitresPerMinute(ResinBed bed) {
        return guide.applyAsDouble(bed);
    }
}
