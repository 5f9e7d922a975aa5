// SPDX-License-Identifier: Apache-2.0
/** The register of sources, and the reader of tables. */
package dev.brinebook.source;
