// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.text.Message;

@SchemaDescription("Reason for a setting.")
public record SettingReason(
        @Property(value = "Name of the setting.", example = "\"hardness\"") String setting,
        @Property(value = "The reason.", example = "\"Regenerate at least every 14 days. Idle resin fouls and "
                + "packs.\"") Message reason) {
}
