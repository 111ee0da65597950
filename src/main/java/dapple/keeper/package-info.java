/** What light fell on the people who read meters, where the site keeps that. */
@NullMarked
package dapple.keeper;

import org.jspecify.annotations.NullMarked;
