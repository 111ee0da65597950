/** What readings should be this week, where somebody goes to take them. */
package dapple.expectation;
