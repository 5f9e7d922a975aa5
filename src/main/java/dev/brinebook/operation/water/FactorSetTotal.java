package dev.brinebook.operation.water;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.request.water.FactorSet;

@About("What another factor set would give for the same water.")
public record FactorSetTotal(
        @Property("The factor set.") FactorSet set,
        @Property("Hardness with iron and manganese counted by it.") HardnessQuantity total) {
}
