/** The operations that size a softener, blend hardness back and review settings. */
package dev.brinebook.operation.softener;
