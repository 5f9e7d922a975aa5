// SPDX-License-Identifier: Apache-2.0
/** The operations that size a softener, blend hardness back and review settings. */
package dev.brinebook.operation.softener;
