// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.answer.cycle.CycleBed;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.softener.BedFinding;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("Hydraulics of a bed: pressure drop, flow limits and backwash.")
public record BedHydraulicsAnswer(
        @Property(value = "Summary in one sentence or more, to quote.", example = "\"The bed takes 4.4 gpm all day (8 "
                + "gpm per square foot of tank) and 14 gpm at peaks (10 gpm per cubic foot of resin). The bed is 33 in "
                + "deep.\"") Message summary,
        @Property("The resin in its tank, and the freeboard during backwash, with the drain line flow control given, or "
                + "the recommended one if none is given.") CycleBed bed,
        @Property("The beads, whole and crushed.") BedBeads beads,
        @Property("The water.") BedWater water,
        @Property(value = "Pressure drop of each flow: the flows given, and those of the guides.", eachOf = BedFlowOrigin.class)
        List<BedFlowLine> pressureDrops,
        @Property("Maximum continuous flow of the bed.") BedLimit lasting,
        @Property("Maximum peak flow of the bed.") BedLimit peaks,
        @Property("Bed expansion by the backwash.") BedBackwash backwash,
        @Property(value = "Problems of the bed with the flows required. Empty when there are none.", eachOf = BedFinding.class)
        List<BedFindingLine> findings,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
