package dapple.reading;

import org.springframework.core.env.Environment;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionalEventListener;

/**
 * Sees to it that a reading is on the disk before it is acknowledged. With no write delay H2 hands every commit to the
 * operating system, which a killed program survives; a power cut needs the disk itself. PostgreSQL does so at commit.
 */
@Component
class DiskSync {
    private final JdbcTemplate database;
    private final boolean embedded;

    DiskSync(JdbcTemplate database, Environment environment) {
        this.database = database;
        this.embedded = environment.getProperty("spring.datasource.url", "").startsWith("jdbc:h2:file:");
    }

    /** After the commit of a reading, in its own thread: before the answer goes out. */
    @TransactionalEventListener
    void sync(ReadingLogged logged) {
        sync();
    }

    /** The same for those of a sheet. */
    @TransactionalEventListener
    void sync(ReadingsImported imported) {
        sync();
    }

    private void sync() {
        if (embedded) {
            database.execute("checkpoint sync");
        }
    }
}
