// SPDX-License-Identifier: Apache-2.0
/** The diagnosis of a complaint. */
package dev.brinebook.operation.complaint;
