// SPDX-License-Identifier: Apache-2.0
/** The operations that estimate peak flow and read a meter. */
package dev.brinebook.operation.household;
