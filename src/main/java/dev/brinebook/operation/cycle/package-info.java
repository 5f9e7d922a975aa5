// SPDX-License-Identifier: Apache-2.0
/** The operation that designs the steps of a regeneration. */
package dev.brinebook.operation.cycle;
