// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import java.util.OptionalDouble;

/**
 * What measurements are held against.
 *
 * @param setSaltKilograms salt of a regeneration by the setting
 * @param brineTested whether a hydrometer was read; else its strength is assumed
 */
public record FieldKnown(OptionalDouble setSaltKilograms, boolean brineTested) {
}
