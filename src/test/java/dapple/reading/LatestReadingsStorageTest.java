package dapple.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNoException;

import dapple.light.quantity.Quantity;
import dapple.people.Role;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.species.LightMethod;
import dapple.species.UvZone;
import dapple.testing.StorageTest;
import dapple.testing.TestCollection;
import dapple.testing.TestCollection.Home;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;

@StorageTest
class LatestReadingsStorageTest {
    private static final Executor A_WHILE = CompletableFuture.delayedExecutor(300, TimeUnit.MILLISECONDS);

    @Autowired
    private TestCollection collection;

    @Autowired
    private ReadingLogging logging;

    @Autowired
    private LatestReadings latest;

    @Autowired
    private JdbcTemplate database;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private Clock clock;

    private SiteFacts site;
    private long pointId;

    @BeforeEach
    void read() {
        site = collection.site();
        SignedIn keeper = collection.person(site, Role.KEEPER);
        UvZone zone = new UvZone(3, LightMethod.SUNBEAM);
        Home home = collection.home(site, keeper, collection.species(site, keeper, "Pogona vitticeps", zone));
        pointId = home.basking().id();
        logging.log(
                new Visitor(site.id(), keeper.personId()),
                new Entry(
                        UUID.randomUUID(),
                        new VisitPlace(UUID.randomUUID(), home.enclosureId(), pointId),
                        collection.meter(site).id(),
                        4,
                        clock.instant()));
    }

    /** As while a year of visits is judged one after the other: who loses against that loses again and again. */
    @Test
    void whoWritesARowWaitsForAnother() {
        database.update("update latest_reading set state = 'NO_TARGET' where point_id = ?", pointId);
        List<CompletableFuture<Void>> waiting = new ArrayList<>();
        transaction.executeWithoutResult(held -> {
            database.update("update latest_reading set version = version + 1 where point_id = ?", pointId);
            waiting.add(CompletableFuture.runAsync(this::refresh));
            CompletableFuture.runAsync(() -> {}, A_WHILE).join();
        });
        assertThat(waiting).allSatisfy(other -> assertThatNoException().isThrownBy(other::join));
        assertThat(database.queryForList("select state from latest_reading where point_id = ?", String.class, pointId))
                .containsExactly("ON_TARGET");
    }

    private void refresh() {
        transaction.executeWithoutResult(own -> latest.refresh(site.id(), pointId, Quantity.UV_INDEX));
    }
}
