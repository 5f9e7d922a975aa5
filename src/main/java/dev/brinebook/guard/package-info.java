// SPDX-License-Identifier: Apache-2.0
/** Argument checks in positive form, and results that may be missing with a reason. */
package dev.brinebook.guard;
