/** What a person must be told beside a number. */
package dev.brinebook.caution;
