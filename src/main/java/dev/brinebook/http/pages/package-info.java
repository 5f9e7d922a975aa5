// SPDX-License-Identifier: Apache-2.0
/** Content that is read rather than calculated: contract, documentation, workbench, health and version. */
package dev.brinebook.http.pages;
