// SPDX-License-Identifier: Apache-2.0
/** The operations that convert hardness, compensate it for other ions, and read reports of water. */
package dev.brinebook.operation.water;
