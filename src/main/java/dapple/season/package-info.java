/** The timers of an enclosure over a year: light hours, sheets for hands, burn hours to come. */
package dapple.season;
