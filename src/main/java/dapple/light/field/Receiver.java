package dapple.light.field;

import dapple.light.geometry.Vec;

/** Where light is asked for, and how it is looked at. */
public record Receiver(Vec place, Facing facing) {}
