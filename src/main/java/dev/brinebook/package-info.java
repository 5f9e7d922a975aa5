/** Where the process begins, and the composition root: settings, the list of operations, start. */
package dev.brinebook;
