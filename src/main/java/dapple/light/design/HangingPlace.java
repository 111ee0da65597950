package dapple.light.design;

import dapple.light.geometry.Vec;

/**
 * Where a lamp may hang.
 *
 * @param at where its middle would be, m
 */
public record HangingPlace(String id, Vec at) {}
