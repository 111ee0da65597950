package dapple.meter;

import dapple.light.metrology.Cause;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;

/** One part of an uncertainty, as it is stored. */
@Embeddable
class StatedPart {
    @Enumerated(EnumType.STRING)
    private Cause cause;

    private double percent;

    @Enumerated(EnumType.STRING)
    private UncertaintyKind kind;

    private String source;

    @SuppressWarnings("NullAway.Init")
    protected StatedPart() {}

    StatedPart(UncertaintyPart part) {
        this.cause = part.cause();
        this.percent = part.percent();
        this.kind = part.kind();
        this.source = part.source();
    }

    UncertaintyPart part() {
        return new UncertaintyPart(cause, percent, kind, source);
    }
}
