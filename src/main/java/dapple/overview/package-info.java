/** The pages that gather: Today, and an enclosure as a whole. */
package dapple.overview;
