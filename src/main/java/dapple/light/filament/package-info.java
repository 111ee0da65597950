/** What glows because it is hot: how its power is spread, and what a dimmer does to it. */
package dapple.light.filament;
