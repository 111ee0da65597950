/** The desk: draft rigs drawn, held against what is needed, compared and installed. */
package dapple.desk;
