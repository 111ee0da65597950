/** Meters held against one another each quarter, and readings read again blind by somebody else. */
package dapple.comparison;
