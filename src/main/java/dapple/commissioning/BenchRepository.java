package dapple.commissioning;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.repository.Repository;

/** Series are added, never changed. */
interface BenchRepository extends Repository<BenchSeries, Long> {
    BenchSeries saveAndFlush(BenchSeries series);

    Optional<BenchSeries> findBySiteIdAndLampIdAndEntryKey(long siteId, long lampId, UUID entryKey);
}
