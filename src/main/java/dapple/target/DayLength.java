package dapple.target;

import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;

/** Hours of light a day in one month of a target version. */
@Entity
@Table(name = "target_day_length")
class DayLength {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "target_version_id")
    private TargetVersion version;

    private int monthNumber;
    private double lightHours;

    @SuppressWarnings("NullAway.Init")
    protected DayLength() {}

    DayLength(TargetVersion version, int monthNumber, double lightHours) {
        this.version = version;
        this.monthNumber = monthNumber;
        this.lightHours = lightHours;
    }

    int monthNumber() {
        return monthNumber;
    }

    double lightHours() {
        return lightHours;
    }
}
