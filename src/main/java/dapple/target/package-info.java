/** Species and their targets: what light they need, in versions, each number with its source. */
package dapple.target;
