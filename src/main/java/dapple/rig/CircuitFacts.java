package dapple.rig;

import java.util.Optional;

/** An electric circuit, of a room or of the whole site. */
public record CircuitFacts(long id, String name, Optional<Long> roomId) {}
