/** Visits, readings, and what each reading was judged to be. */
package dapple.reading;
