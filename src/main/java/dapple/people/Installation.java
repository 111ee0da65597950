package dapple.people;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;
import org.springframework.data.domain.Persistable;

/** The one row that says that this installation has been begun; its fixed id lets nobody begin it twice. */
@Entity
class Installation implements Persistable<Long> {
    static final long ONLY = 1;

    @Id
    private long id;

    private Instant begunAt;

    @SuppressWarnings("NullAway.Init")
    protected Installation() {}

    Installation(Instant begunAt) {
        this.id = ONLY;
        this.begunAt = begunAt;
    }

    @Override
    public Long getId() {
        return id;
    }

    /** Always inserted, never merged. */
    @Override
    public boolean isNew() {
        return true;
    }
}
