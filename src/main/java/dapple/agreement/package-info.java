/** What the readings of a site say of its meters: which has drifted, which was knocked, and what is done about it. */
package dapple.agreement;
