package dapple.evidence;

import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.time.Instant;

/** That one evidence row holds for its species, until the next choice. Never edited. */
@Entity
class EvidenceChoice {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private long id;

    private long siteId;
    private long speciesId;
    private int number;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "evidence_id")
    private Evidence evidence;

    private String reason;
    private Instant chosenAt;
    private long chosenBy;

    @SuppressWarnings("NullAway.Init")
    protected EvidenceChoice() {}

    EvidenceChoice(long siteId, Evidence evidence, NewChoice choice, Instant chosenAt) {
        this.siteId = siteId;
        this.speciesId = choice.speciesId();
        this.number = choice.seen() + 1;
        this.evidence = evidence;
        this.reason = choice.reason();
        this.chosenAt = chosenAt;
        this.chosenBy = choice.personId();
    }

    ChoiceFacts facts() {
        return new ChoiceFacts(number, evidence.facts(), reason, chosenAt, chosenBy);
    }
}
