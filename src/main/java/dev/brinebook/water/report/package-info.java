// SPDX-License-Identifier: Apache-2.0
/** A water report: what is printed, in one form each, whether it can be true, what it means, and which test to order next. */
package dev.brinebook.water.report;
