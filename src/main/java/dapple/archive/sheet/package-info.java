/** What of a year's record people read without the program: weeks on target, readings, changes, rounds, a summary. */
package dapple.archive.sheet;
