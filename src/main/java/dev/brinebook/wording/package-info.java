/** What is said to people, not yet in any language. */
package dev.brinebook.wording;
