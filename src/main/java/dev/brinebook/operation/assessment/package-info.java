// SPDX-License-Identifier: Apache-2.0
/** The operation that assesses a whole job, and the sheet to print of it. */
package dev.brinebook.operation.assessment;
