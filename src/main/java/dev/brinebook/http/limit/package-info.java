/** What may be done at once, how long it may take and what the heap has room for; what is counted of it. */
package dev.brinebook.http.limit;
