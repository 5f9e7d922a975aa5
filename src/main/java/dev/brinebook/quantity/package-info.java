// SPDX-License-Identifier: Apache-2.0
/** Units that own their exact factors, and rounding. */
package dev.brinebook.quantity;
