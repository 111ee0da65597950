/** Draft rigs: what could hang in an enclosure, beside what hangs there. */
package dapple.draft;
