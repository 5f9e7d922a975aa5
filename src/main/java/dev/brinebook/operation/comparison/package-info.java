// SPDX-License-Identifier: Apache-2.0
/** Two answers of any other operation, compared number by number: a case by two models, or two cases by one. */
package dev.brinebook.operation.comparison;
