// SPDX-License-Identifier: Apache-2.0
/** Cash flows, prices, conversions, alternatives, and how certain their worth is. */
package dev.brinebook.payback;
