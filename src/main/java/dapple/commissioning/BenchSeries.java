package dapple.commissioning;

import dapple.commissioning.BenchEntry.Row;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** Readings of one lamp on a bench, which became its measured output. Never edited. */
@Entity
@Immutable
@Table(name = "bench_series")
class BenchSeries {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long lampId;
    private long meterId;
    private long lampOutputId;
    private UUID entryKey;
    private Instant measuredAt;
    private Instant recordedAt;
    private long recordedBy;

    @ElementCollection(fetch = FetchType.LAZY)
    @CollectionTable(name = "bench_reading", joinColumns = @JoinColumn(name = "bench_series_id"))
    @OrderColumn(name = "place")
    private List<ReadRow> rows = new ArrayList<>();

    @SuppressWarnings("NullAway.Init")
    protected BenchSeries() {}

    BenchSeries(Kept kept, BenchEntry entry) {
        this.siteId = kept.siteId();
        this.lampId = kept.lampId();
        this.meterId = entry.meter().id();
        this.lampOutputId = kept.outputId();
        this.entryKey = entry.key();
        this.measuredAt = entry.at();
        this.recordedAt = kept.at();
        this.recordedBy = kept.personId();
        entry.rows().forEach(row -> rows.add(new ReadRow(row.distanceMetres(), row.amount())));
    }

    List<Row> rows() {
        return rows.stream()
                .map(row -> new Row(row.distanceMetres(), row.amount()))
                .toList();
    }

    /** What a series is kept for, and by whom. */
    record Kept(long siteId, long lampId, long outputId, long personId, Instant at) {}

    /** One reading. */
    @Embeddable
    record ReadRow(double distanceMetres, double amount) {}
}
