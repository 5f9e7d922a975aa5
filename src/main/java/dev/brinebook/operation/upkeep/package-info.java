// SPDX-License-Identifier: Apache-2.0
/** The operation that plans the upkeep of a softener. */
package dev.brinebook.operation.upkeep;
