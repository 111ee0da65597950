/** Sheets as people keep them: files, encodings, separators, numbers, days, columns. Plain Java: it knows no database. */
package dapple.importing.sheet;
