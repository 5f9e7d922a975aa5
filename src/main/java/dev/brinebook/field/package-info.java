// SPDX-License-Identifier: Apache-2.0
/** Readings taken at a softener, reduced to what they say of it, and what a technician checks before a conversion. */
package dev.brinebook.field;
