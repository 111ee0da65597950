/** Where every enclosure stands, and which need somebody. */
package dapple.review;
