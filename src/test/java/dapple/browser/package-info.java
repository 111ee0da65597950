/** The program in a real browser: the way of one reading, a rule for every page, and the pictures of the docs. */
package dapple.browser;
