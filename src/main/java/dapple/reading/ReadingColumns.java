package dapple.reading;

import dapple.light.judging.Band;
import dapple.light.judging.Limits;
import dapple.site.CsvColumns;
import dapple.species.SpeciesFacts;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The columns of readings, for whatever file they leave in. */
public final class ReadingColumns {
    private final Map<Long, String> names;
    private final Map<Long, SpeciesFacts> species;

    private ReadingColumns(Map<Long, String> names, Map<Long, SpeciesFacts> species) {
        this.names = names;
        this.species = species;
    }

    /**
     * All that is known of each reading.
     *
     * @param names of people, by id
     * @param species by id
     */
    public static CsvColumns<ReadingLine> of(Map<Long, String> names, Map<Long, SpeciesFacts> species) {
        ReadingColumns columns = new ReadingColumns(names, species);
        return columns.changes(columns.judged(columns.measured(columns.taken(CsvColumns.none()))));
    }

    private CsvColumns<ReadingLine> taken(CsvColumns<ReadingLine> columns) {
        return columns.with("reading", line -> line.reading().id())
                .with("room", line -> line.enclosure().room())
                .with("enclosure", line -> line.enclosure().code())
                .with("point", line -> line.point().code())
                .word("role-of-point", "role-of-point.", line -> line.point().role())
                .with("taken-at", line -> line.reading().takenAt())
                .with("time-known", line -> !line.reading().dayOnly())
                .with("taken-by", this::takenBy)
                .with("recorded-at", line -> line.reading().recordedAt())
                .with("recorded-by", line -> name(line.reading().recordedBy()));
    }

    /** As a sheet names them from which it was imported, else whose visit it was. */
    private Optional<String> takenBy(ReadingLine line) {
        return line.reading().nameOnSheet().or(() -> name(line.reading().takenBy()));
    }

    private CsvColumns<ReadingLine> measured(CsvColumns<ReadingLine> columns) {
        return columns.word("quantity", "quantity.", line -> line.reading().quantity())
                .with("amount-shown", line -> line.reading().amount())
                .with("unit", line -> line.reading().quantity().unit())
                .word("held", "facing.", line -> line.reading().facing())
                .with("held-as-asked", line -> line.reading().heldAsAsked())
                .with("meter", line -> line.meter().code())
                .with("description", line -> line.meter().description())
                .with("certificate", verdict(HistoryVerdict::certificate))
                .with("calibrated-at", verdict(HistoryVerdict::calibratedAt))
                .with("factor", verdict(HistoryVerdict::factor))
                .with("amount", verdict(found -> CsvColumns.computed(found.amount())))
                .with(
                        "amount-low",
                        verdict(found -> CsvColumns.computed(found.interval().low())))
                .with(
                        "amount-high",
                        verdict(found -> CsvColumns.computed(found.interval().high())));
    }

    private CsvColumns<ReadingLine> judged(CsvColumns<ReadingLine> columns) {
        return columns.with(
                        "species",
                        line -> line.verdict()
                                .flatMap(HistoryVerdict::speciesId)
                                .map(species::get)
                                .map(SpeciesFacts::scientificName))
                .with("counts", line -> line.reading().isStanding())
                .word("verdict", "state.", verdict(HistoryVerdict::state))
                .with("judged-at", verdict(HistoryVerdict::judgedAt))
                .with("target-version", verdict(HistoryVerdict::target))
                .with(
                        "vets-order-applied",
                        line -> line.verdict().map(found -> found.orderId().isPresent()))
                .with("limit-low", line -> band(line).filter(Band::hasLow).map(Band::low))
                .with("limit-high", line -> band(line).map(Band::high))
                .with(
                        "ceiling",
                        line -> line.limits().filter(Limits::hasCeiling).map(Limits::ceiling));
    }

    private static Optional<Band> band(ReadingLine line) {
        return line.limits().map(limits -> limits.at(line.point().role())).filter(band -> !band.isOpen());
    }

    private CsvColumns<ReadingLine> changes(CsvColumns<ReadingLine> columns) {
        return columns.with("replaces-reading", line -> line.replaced().map(RecordedReading::id))
                .with("replaced-amount", line -> line.replaced().map(RecordedReading::amount))
                .with("corrected-because", line -> line.reading().corrects())
                .with("replaced-by-reading", line -> line.reading().correctedBy())
                .with("replaced-at", line -> line.reading().correctedAt())
                .with("withdrawn-at", gone(RecordedReading.Withdrawal::at))
                .with("withdrawn-by", gone(found -> name(found.personId())))
                .with("withdrawn-because", gone(RecordedReading.Withdrawal::reason));
    }

    private static Function<ReadingLine, Optional<?>> verdict(Function<HistoryVerdict, ?> part) {
        return line -> line.verdict().map(part);
    }

    private static Function<ReadingLine, Optional<?>> gone(Function<RecordedReading.Withdrawal, ?> part) {
        return line -> line.reading().withdrawal().map(part);
    }

    private Optional<String> name(long personId) {
        return Optional.ofNullable(names.get(personId));
    }
}
