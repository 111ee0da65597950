/** The product's own small drawings, as numbers that a template puts into SVG. No framework. */
package dapple.drawing;
