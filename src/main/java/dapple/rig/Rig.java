package dapple.rig;

import dapple.site.NotFoundException;
import java.util.List;
import java.util.Optional;

/**
 * What hangs and stands in an enclosure at one instant.
 *
 * @param newest the newest change at or before that instant, whose id names the rig; empty before the first
 * @param newestOfLight the newest of them that a reading can tell, where it is at hand: of a timer alone it cannot
 */
public record Rig(
        long enclosureId,
        Optional<RigChangeFacts> newest,
        Optional<RigChangeFacts> newestOfLight,
        List<FittingFacts> fittings,
        List<CoverFacts> covers,
        List<FurnitureFacts> furniture) {
    public Rig {
        fittings = List.copyOf(fittings);
        covers = List.copyOf(covers);
        furniture = List.copyOf(furniture);
    }

    /** One whose newest change of the light is known only if it is the newest of all. */
    public Rig(
            long enclosureId,
            Optional<RigChangeFacts> newest,
            List<FittingFacts> fittings,
            List<CoverFacts> covers,
            List<FurnitureFacts> furniture) {
        this(enclosureId, newest, newest.filter(RigChangeFacts::isOfLight), fittings, covers, furniture);
    }

    public static Rig empty(long enclosureId) {
        return new Rig(enclosureId, Optional.empty(), List.of(), List.of(), List.of());
    }

    public boolean isEmpty() {
        return fittings.isEmpty() && covers.isEmpty() && furniture.isEmpty();
    }

    public FittingFacts fitting(long fittingId) {
        return fittings.stream()
                .filter(fitting -> fitting.id() == fittingId)
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }

    public CoverFacts cover(long coverId) {
        return covers.stream()
                .filter(cover -> cover.id() == coverId)
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }

    public FurnitureFacts furniture(long furnitureId) {
        return furniture.stream()
                .filter(item -> item.id() == furnitureId)
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }

    Rig withFittings(List<FittingFacts> changed) {
        return new Rig(enclosureId, newest, newestOfLight, changed, covers, furniture);
    }

    Rig withCovers(List<CoverFacts> changed) {
        return new Rig(enclosureId, newest, newestOfLight, fittings, changed, furniture);
    }

    Rig withFurniture(List<FurnitureFacts> changed) {
        return new Rig(enclosureId, newest, newestOfLight, fittings, covers, changed);
    }
}
