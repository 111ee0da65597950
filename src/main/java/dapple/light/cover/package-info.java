/** What lies between lamps and places: mesh, sheets, panes. */
package dapple.light.cover;
