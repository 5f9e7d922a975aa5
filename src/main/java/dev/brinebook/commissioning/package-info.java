// SPDX-License-Identifier: Apache-2.0
/** Putting a softener into service: its steps, the readings of the first regeneration with their bands, and what readings say. */
package dev.brinebook.commissioning;
