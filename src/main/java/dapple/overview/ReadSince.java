package dapple.overview;

import dapple.desk.Newest;
import dapple.enclosure.PointFacts;
import dapple.prediction.EnclosureScene;
import dapple.prediction.SpeciesNeed;
import dapple.prediction.SpeciesNeed.UnderOrder;
import dapple.reading.JudgedReading;
import dapple.review.Unread;
import dapple.rig.RigChangeFacts;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The newest readings in an enclosure, held against what has changed since they were taken.
 *
 * @param rigChange the newest that a reading can tell; empty: none on record
 */
record ReadSince(List<JudgedReading> readings, EnclosureScene scene, Optional<RigChangeFacts> rigChange) {
    ReadSince {
        readings = List.copyOf(readings);
    }

    /** With the states that hold now: what was read before an order, a target or a rig says nothing of it. */
    Newest newest() {
        return new Newest(readings.stream().map(this::now).toList());
    }

    private JudgedReading now(JudgedReading reading) {
        return scene.points().stream()
                .filter(point -> point.id() == reading.pointId())
                .findFirst()
                .flatMap(point -> unread(reading, point))
                .filter(change -> change.silences(reading))
                .map(change -> reading.stale())
                .orElse(reading);
    }

    private Optional<Unread> unread(JudgedReading reading, PointFacts point) {
        return Unread.ofOrders(
                        reading,
                        served(point).flatMap(need -> need.order().stream()).map(UnderOrder::order))
                .or(() -> Unread.ofTarget(
                        reading,
                        served(point)
                                .filter(need -> reading.speciesId().equals(Optional.of(need.speciesId())))
                                .flatMap(need -> need.target().stream())
                                .findFirst()))
                .or(() -> Unread.ofRig(reading, rigChange.map(RigChangeFacts::at)));
    }

    private Stream<SpeciesNeed> served(PointFacts point) {
        return scene.needs().stream().filter(need -> scene.serves(point, need));
    }

    /** When the light changed after a reading, if it did: then it cannot be held against what is predicted now. */
    Optional<Instant> lightChangedSince(JudgedReading reading) {
        return rigChange.map(RigChangeFacts::at).filter(at -> at.isAfter(reading.takenAt()));
    }
}
