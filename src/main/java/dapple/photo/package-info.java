/** Photos of visits. */
package dapple.photo;
