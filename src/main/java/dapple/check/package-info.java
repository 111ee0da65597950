/** The checks of the trade: what everybody who lights reptiles looks for in a rig, computed. {@code docs/checks.md} */
package dapple.check;
