// SPDX-License-Identifier: Apache-2.0
/** The operations that chart the capacity of a resin and compute the hydraulics of a bed. */
package dev.brinebook.operation.resin;
