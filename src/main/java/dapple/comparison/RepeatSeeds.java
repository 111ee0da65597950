package dapple.comparison;

import java.util.Optional;
import java.util.UUID;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/** The seed of each site by which readings are drawn, made by chance when the first one is needed. */
@Component
class RepeatSeeds {
    private final JdbcClient database;
    private final TransactionTemplate alone;

    RepeatSeeds(JdbcClient database, PlatformTransactionManager transactions) {
        this.database = database;
        this.alone = new TransactionTemplate(transactions);
        this.alone.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
    }

    RepeatDraw of(long siteId) {
        return new RepeatDraw(find(siteId).orElseGet(() -> make(siteId)));
    }

    private Optional<UUID> find(long siteId) {
        return database.sql("select seed from repeat_seed where site_id = :siteId")
                .param("siteId", siteId)
                .query(UUID.class)
                .optional();
    }

    /** In a transaction of its own: whose came second takes the first one's, and the reading is stored all the same. */
    private UUID make(long siteId) {
        try {
            alone.executeWithoutResult(
                    status -> database.sql("insert into repeat_seed (site_id, seed) values (:siteId, :seed)")
                            .param("siteId", siteId)
                            .param("seed", UUID.randomUUID())
                            .update());
        } catch (DataIntegrityViolationException madeMeanwhile) {
            return find(siteId).orElseThrow(() -> madeMeanwhile);
        }
        return find(siteId).orElseThrow();
    }
}
