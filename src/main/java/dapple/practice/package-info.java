/** What is done with meters so that their readings can be trusted, and what happens to them. */
package dapple.practice;
