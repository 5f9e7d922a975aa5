// SPDX-License-Identifier: Apache-2.0
/** The operations that convert hardness and compensate it for other ions. */
package dev.brinebook.operation.water;
