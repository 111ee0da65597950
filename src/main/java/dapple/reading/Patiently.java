package dapple.reading;

import java.util.function.Supplier;
import org.springframework.dao.ConcurrencyFailureException;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/** Does a piece of work in a transaction of its own, again when another writer was quicker. */
@Component
public class Patiently {
    /** A conflict with another writer is over when the other has committed: two more tries are plenty. */
    private static final int TRIES = 3;

    private final TransactionTemplate transaction;

    Patiently(PlatformTransactionManager transactions) {
        this.transaction = new TransactionTemplate(transactions);
        this.transaction.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
    }

    /** What the work gives back: the id of something, as a rule. */
    public long run(Supplier<Long> work) {
        for (int attempt = 1; ; attempt++) {
            try {
                Long found = transaction.execute(status -> work.get());
                return found == null ? 0 : found;
            } catch (DataIntegrityViolationException | ConcurrencyFailureException otherWriter) {
                if (attempt == TRIES) {
                    throw otherWriter;
                }
            }
        }
    }
}
