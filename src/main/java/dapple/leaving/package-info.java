/** People who left: their names go, at once or after a time; what is kept about somebody, for that person. */
package dapple.leaving;
