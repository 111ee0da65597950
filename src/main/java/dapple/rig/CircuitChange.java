package dapple.rig;

import java.util.Optional;

/**
 * What is said of a circuit.
 *
 * @param roomId the room that it serves; empty for the whole site
 */
record CircuitChange(Optional<Long> roomId, String name) {}
