// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.api.CautionAnswer;
import dev.brinebook.caution.Caution;
import dev.brinebook.caution.Reader;
import dev.brinebook.text.Localizable;
import java.util.EnumSet;
import java.util.Set;

/** Groups of the cautions on a checklist. */
enum CautionGroup implements Localizable {
    SAFETY, WATER, DRAIN, LAW;

    private static final Set<Caution> OF_SAFETY = EnumSet.of(Caution.POWER_AND_PRESSURE, Caution.MANGANESE_INFANTS,
            Caution.WELL_WITHOUT_BACTERIA_TEST, Caution.POTASSIUM_KIDNEY_HEART, Caution.SODIUM_RESTRICTED_DIET,
            Caution.LEAD_COPPER_PLUMBING);
    private static final Set<Caution> OF_DRAIN = EnumSet.of(Caution.SEPTIC_SYSTEM, Caution.SEWER_SALT_LIMITS, Caution.DRAIN_AIR_GAP,
            Caution.DRAIN_AIR_GAP_EUROPE);

    static CautionGroup of(CautionAnswer caution) {
        return OF_SAFETY.contains(caution.code()) ? SAFETY : OF_DRAIN.contains(caution.code()) ? DRAIN
                : caution.reader() == Reader.AUTHORITY ? LAW : WATER;
    }

    @Override
    public String textId() {
        return Localizable.idOf("cautionGroup", this);
    }
}
