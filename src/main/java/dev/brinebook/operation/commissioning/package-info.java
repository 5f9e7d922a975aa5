// SPDX-License-Identifier: Apache-2.0
/** The operation that plans how a softener is put into service, and judges the readings of its first regeneration. */
package dev.brinebook.operation.commissioning;
