/** What is to be hung so that the light is as wanted: heights, layers, swaps, and whole rigs searched. */
package dapple.light.design;
