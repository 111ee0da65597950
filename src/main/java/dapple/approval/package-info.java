/** The next version of a target: typed, shown against the one in force, approved. */
package dapple.approval;
