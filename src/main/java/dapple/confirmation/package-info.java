/** Confirms suggested zones for many species at once, each becoming the first version of its target. */
package dapple.confirmation;
