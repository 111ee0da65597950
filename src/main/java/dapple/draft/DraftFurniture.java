package dapple.draft;

import dapple.rig.Furniture;
import java.util.Optional;

/**
 * A piece of furniture of a draft.
 *
 * @param furnitureId the installed piece that it continues
 */
public record DraftFurniture(Optional<Long> furnitureId, Furniture furniture) {}
