package dev.brinebook.operation.assessment;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.wording.Message;

@About("Why a setting is as it is.")
public record SettingReason(
        @Property(value = "Name of the setting beside it.", example = "\"hardness\"") String setting,
        @Property(value = "The reason.", example = "\"14 days at the latest.\"") Message reason) {
}
