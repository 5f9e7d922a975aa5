// SPDX-License-Identifier: Apache-2.0
/** The operations that estimate the payback of a conversion and compare alternatives. */
package dev.brinebook.operation.payback;
