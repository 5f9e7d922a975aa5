/** The register of sources, and the reader of tables. */
package dev.brinebook.source;
