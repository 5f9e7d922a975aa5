/** What is read rather than calculated: contract, documentation, workbench, health and version. */
package dev.brinebook.http.pages;
