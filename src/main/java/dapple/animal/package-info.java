/** Animals and their stays: who lived where, when. */
package dapple.animal;
