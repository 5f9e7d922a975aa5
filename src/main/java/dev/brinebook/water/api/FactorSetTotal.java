package dev.brinebook.water.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.api.HardnessQuantity;

@About("What another factor set would give for the same water.")
public record FactorSetTotal(
        @Property("The factor set.") FactorSet set,
        @Property("Hardness with iron and manganese counted by it.") HardnessQuantity total) {
}
