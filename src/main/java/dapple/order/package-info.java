/** A vet's orders: what readings at one animal are judged by for a time, and what cage mates make of it. */
package dapple.order;
