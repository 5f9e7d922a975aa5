// SPDX-License-Identifier: Apache-2.0
/** The OpenAPI document, built from the list of operations that is routed. */
package dev.brinebook.contract;
