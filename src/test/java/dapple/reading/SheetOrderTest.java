package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.collect.ImmutableList;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SheetOrderTest {
    private static final Instant BEGIN = Instant.parse("2025-01-06T08:00:00.123456Z");

    private final Random random = new Random(7);

    @Test
    void piecesComeBackInTheOrderOfAll() {
        List<SheetReading> all = readings(1_000);
        assertThat(sorted(all, 64)).isEqualTo(sorted(all, 10_000));
    }

    @Test
    void everyReadingComesBackUnchanged() {
        List<SheetReading> all = readings(500);
        assertThat(sorted(all, 100)).containsExactlyInAnyOrderElementsOf(all);
    }

    @Test
    void theReadingsOfAVisitComeTogether() {
        SheetBatches batches = new SheetBatches(sorted(readings(1_000), 64).iterator(), 10);
        List<SheetVisit> visits =
                ImmutableList.copyOf(batches).stream().flatMap(List::stream).toList();
        assertThat(visits).extracting(visit -> visit.key(1)).doesNotHaveDuplicates();
    }

    @Test
    void aBatchIsOfOneEnclosure() {
        SheetBatches batches = new SheetBatches(sorted(readings(1_000), 64).iterator(), 10);
        assertThat(ImmutableList.copyOf(batches))
                .allSatisfy(batch -> assertThat(batch)
                        .extracting(SheetVisit::enclosureId)
                        .containsOnly(batch.get(0).enclosureId()));
    }

    private List<SheetReading> readings(int count) {
        return IntStream.range(0, count).mapToObj(at -> reading()).toList();
    }

    private SheetReading reading() {
        long enclosure = random.nextInt(7);
        return new SheetReading(
                enclosure,
                10 * enclosure + random.nextInt(3),
                random.nextInt(2),
                random.nextInt(100) / 10.0,
                BEGIN.plusSeconds(60L * random.nextInt(40)),
                false,
                random.nextBoolean() ? Optional.of("Änne") : Optional.empty());
    }

    private static List<SheetReading> sorted(List<SheetReading> all, int inMemory) {
        try (SheetOrder order = new SheetOrder(inMemory)) {
            all.forEach(order::add);
            return ImmutableList.copyOf(order.sorted());
        }
    }
}
