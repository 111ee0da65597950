package dapple.reading;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import org.hibernate.annotations.Immutable;

/** One of the amounts that were typed one after the other for one reading. Never edited. */
@Entity
@Immutable
class ReadingRepeat {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long readingId;
    private int number;
    private double amount;

    @SuppressWarnings("NullAway.Init")
    protected ReadingRepeat() {}

    ReadingRepeat(Reading reading, int number, double amount) {
        this.siteId = reading.siteId();
        this.readingId = reading.id();
        this.number = number;
        this.amount = amount;
    }

    long readingId() {
        return readingId;
    }

    double amount() {
        return amount;
    }
}
