package dapple.evidence;

/**
 * A choice of one evidence row of a species.
 *
 * @param seen number of the choice that held when the person chose; 0 if none did
 */
public record NewChoice(long speciesId, int seen, long evidenceId, String reason, long personId) {}
