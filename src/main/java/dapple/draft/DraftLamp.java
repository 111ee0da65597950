package dapple.draft;

import dapple.rig.Hanging;
import java.util.Optional;

/**
 * A lamp of a draft.
 *
 * @param fittingId the installed fitting that it was drawn from
 */
public record DraftLamp(Optional<Long> fittingId, LampPick lamp, Hanging hanging) {}
