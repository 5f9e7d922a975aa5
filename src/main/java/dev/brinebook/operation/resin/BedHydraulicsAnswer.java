package dev.brinebook.operation.resin;

import dev.brinebook.answer.cycle.CycleBed;
import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.wording.Message;
import java.util.List;

@About("What water does in a bed: what pressure it loses, how much the bed takes, and what lifts it.")
public record BedHydraulicsAnswer(
        @Property(value = "One sentence or more to quote.", example = "\"The bed is 33 in deep and takes 4.363 gpm all day"
                + " (surfaceVelocity) and 14.4 gpm in short peaks (peakFlowPerResin).\"") Message summary,
        @Property("The resin in its tank, and the room that the backwash has: by the drain line flow control that was given,"
                + " else by the one to choose.") CycleBed bed,
        @Property("The beads, whole and crushed.") BedBeads beads,
        @Property("The water.") BedWater water,
        @Property("What each flow loses in the bed: the flows given, and those of the guides.")
        List<BedFlowLine> pressureDrops,
        @Property("What the bed takes all day.") BedLimit lasting,
        @Property("What the bed takes in short peaks.") BedLimit peaks,
        @Property("What lifts the bed.") BedBackwash backwash,
        @Property("What is wrong with the bed for what it is asked to do; empty when nothing is.")
        List<BedFindingLine> findings,
        @Property("What to be careful about.") List<CautionAnswer> cautions,
        @Property("Values that were taken.") List<AssumptionAnswer> assumptions,
        @Property("Why each number is what it is.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
