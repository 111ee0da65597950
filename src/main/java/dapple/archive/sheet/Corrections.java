package dapple.archive.sheet;

import dapple.animal.Animals;
import dapple.archive.RecordMaking;
import dapple.enclosure.Enclosures;
import dapple.meter.Calibrations;
import dapple.meter.MeterFacts;
import dapple.meter.Meters;
import dapple.reading.ReadingLines;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** Everything that was corrected or withdrawn: of the readings of a record, and what else was withdrawn in its time. */
@Component
class Corrections {
    private final ReadingLines lines;
    private final Meters meters;
    private final Calibrations calibrations;
    private final Animals animals;
    private final Enclosures enclosures;

    Corrections(ReadingLines lines, Meters meters, Calibrations calibrations, Animals animals, Enclosures enclosures) {
        this.lines = lines;
        this.meters = meters;
        this.calibrations = calibrations;
        this.animals = animals;
        this.enclosures = enclosures;
    }

    List<Undone> of(RecordMaking making) {
        return Stream.of(readings(making), calibrations(making), stays(making))
                .flatMap(some -> some)
                .sorted(Comparator.comparing(one -> one.at().orElse(Instant.MAX)))
                .toList();
    }

    private Stream<Undone> readings(RecordMaking making) {
        return lines.undone(making.siteId(), making.from(), making.span().to()).stream()
                .map(Undone::of);
    }

    private Stream<Undone> calibrations(RecordMaking making) {
        return meters.byId(making.siteId()).values().stream()
                .sorted(Comparator.comparing(MeterFacts::code))
                .flatMap(meter -> calibrations.of(making.siteId(), meter.id()).stream()
                        .filter(one -> one.withdrawal()
                                .filter(gone -> isIn(gone.at(), making))
                                .isPresent())
                        .map(one -> Undone.of(meter, one)));
    }

    private Stream<Undone> stays(RecordMaking making) {
        return animals
                .staysWithdrawn(making.siteId(), making.from(), making.span().to())
                .stream()
                .map(stay -> Undone.of(
                        stay, enclosures.get(making.siteId(), stay.stay().enclosureId())));
    }

    private static boolean isIn(Instant at, RecordMaking making) {
        return !at.isBefore(making.from()) && at.isBefore(making.span().to());
    }
}
