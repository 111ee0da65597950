package dapple.rig;

import dapple.light.cover.Filter.Rectangle;
import dapple.site.SourceMark;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A mesh or sheet that covers an enclosure over [from, to). */
@Entity
class CoverItem extends DatedPart {
    private String name;

    @Enumerated(EnumType.STRING)
    private Kind kind;

    private @Nullable Double heightMetres;

    @Column(name = "low_x_metres")
    private @Nullable Double lowX;

    @Column(name = "low_y_metres")
    private @Nullable Double lowY;

    @Column(name = "high_x_metres")
    private @Nullable Double highX;

    @Column(name = "high_y_metres")
    private @Nullable Double highY;

    private @Nullable Double wireMetres;
    private @Nullable Double pitchMetres;

    private @Nullable String source;

    @Enumerated(EnumType.STRING)
    private @Nullable SourceMark mark;

    private int layers;

    @ElementCollection(fetch = FetchType.LAZY)
    @CollectionTable(name = "cover_transmittance", joinColumns = @JoinColumn(name = "cover_item_id"))
    private Set<PassingRow> passing = new HashSet<>();

    @SuppressWarnings("NullAway.Init")
    protected CoverItem() {}

    CoverItem(RigChange begun, Cover cover) {
        super(begun);
        this.name = cover.name();
        this.kind = Kind.of(cover.material());
        this.heightMetres = cover.heightMetres().orElse(null);
        this.layers = cover.layers();
        cover.over().ifPresent(this::limit);
        if (cover.material() instanceof CoverMaterial.Weave weave) {
            weave(weave);
        } else if (cover.material() instanceof CoverMaterial.Passing known) {
            known.byQuantity().forEach((quantity, share) -> passing.add(PassingRow.of(quantity, share)));
        }
    }

    private void limit(Rectangle over) {
        this.lowX = over.lowX();
        this.lowY = over.lowY();
        this.highX = over.highX();
        this.highY = over.highY();
    }

    private void weave(CoverMaterial.Weave weave) {
        this.wireMetres = weave.wireMetres();
        this.pitchMetres = weave.pitchMetres();
        this.source = weave.provenance().source();
        this.mark = weave.provenance().mark();
    }

    Cover cover() {
        return new Cover(name, Optional.ofNullable(heightMetres), over(), material(), layers);
    }

    private Optional<Rectangle> over() {
        return lowX == null || lowY == null || highX == null || highY == null
                ? Optional.empty()
                : Optional.of(new Rectangle(lowX, lowY, highX, highY));
    }

    private CoverMaterial material() {
        if (wireMetres != null && pitchMetres != null && mark != null && source != null) {
            return new CoverMaterial.Weave(wireMetres, pitchMetres, new Provenance(mark, source));
        }
        return new CoverMaterial.Passing(
                kind == Kind.MESH,
                passing.stream().collect(Collectors.toMap(PassingRow::quantity, PassingRow::transmittance)));
    }

    CoverFacts facts() {
        return new CoverFacts(id(), enclosureId(), cover(), span());
    }

    /** What the row says of. */
    enum Kind {
        WEAVE,
        MESH,
        SHEET;

        static Kind of(CoverMaterial material) {
            if (material instanceof CoverMaterial.Weave) {
                return WEAVE;
            }
            return material.isMesh() ? MESH : SHEET;
        }
    }
}
