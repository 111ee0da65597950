package dapple.draft;

import dapple.rig.Cover;
import java.util.Optional;

/**
 * A cover of a draft.
 *
 * @param coverId the installed cover that it continues
 */
public record DraftCover(Optional<Long> coverId, Cover cover) {}
