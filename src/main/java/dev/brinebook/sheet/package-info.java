/** Pages to print: XHTML with its own style, and the same typeset as PDF. */
package dev.brinebook.sheet;
