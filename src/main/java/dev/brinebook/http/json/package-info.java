/** JSON read strictly, with every fault of form gathered, and written. */
package dev.brinebook.http.json;
