/** The pages on which animals and groups are found, moved, counted, ended and taken back. */
package dapple.housing;
