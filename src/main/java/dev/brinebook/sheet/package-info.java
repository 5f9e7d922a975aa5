// SPDX-License-Identifier: Apache-2.0
/** Pages to print: XHTML with its own style, and the same typeset as PDF. */
package dev.brinebook.sheet;
