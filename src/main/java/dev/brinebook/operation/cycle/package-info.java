/** The operation that designs the steps of a regeneration. */
package dev.brinebook.operation.cycle;
