// SPDX-License-Identifier: Apache-2.0
/** Where the process begins, and the composition root: settings, the list of operations, start. */
package dev.brinebook;
