package dapple.rig;

import dapple.light.quantity.Quantity;
import dapple.site.SourceMark;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;

/** A row of a cover's transmittances. */
@Embeddable
record PassingRow(
        @Enumerated(EnumType.STRING) Quantity quantity,
        double share,
        @Enumerated(EnumType.STRING) SourceMark mark,
        String source) {

    static PassingRow of(Quantity quantity, CoverTransmittance passing) {
        Provenance provenance = passing.provenance();
        return new PassingRow(quantity, passing.share(), provenance.mark(), provenance.source());
    }

    CoverTransmittance transmittance() {
        return new CoverTransmittance(share, new Provenance(mark, source));
    }
}
