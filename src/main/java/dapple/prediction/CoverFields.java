package dapple.prediction;

import dapple.light.cover.Filter.Rectangle;
import dapple.light.quantity.Quantity;
import dapple.rig.Cover;
import dapple.rig.CoverMaterial;
import dapple.rig.CoverTransmittance;
import dapple.rig.Provenance;
import dapple.rig.RigScene;
import dapple.site.Given;
import dapple.site.SourceMark;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** What is between the fields of a form for cover and a cover. */
record CoverFields(CoverForm form) {
    private static final double MILLIMETRES = 1000;
    private static final double PERCENT = 100;
    private static final Map<Quantity, String> FIELDS = Map.of(
            Quantity.UV_INDEX, "uvi",
            Quantity.ILLUMINANCE, "illuminance",
            Quantity.UVA, "uva",
            Quantity.IR_A, "irA",
            Quantity.IR_B, "irB",
            Quantity.IRRADIANCE, "irradiance");

    static CoverForm empty(CoverKind kind, LocalDateTime at) {
        return new CoverForm(
                null, null, kind, "", null, null, null, null, null, null, null, null, 1, null, null, null, null, null,
                null, null, null, null, null, null, null, "", at, null, null);
    }

    /** The form for another cover in the place of one: what it is called and where it lies stays. */
    static CoverForm inPlaceOf(Cover cover, CoverKind kind, LocalDateTime at) {
        return new CoverForm(
                null,
                null,
                kind,
                cover.name(),
                cover.heightMetres().map(CoverFields::rounded).orElse(null),
                cover.over().map(Rectangle::lowX).map(CoverFields::rounded).orElse(null),
                cover.over().map(Rectangle::lowY).map(CoverFields::rounded).orElse(null),
                cover.over().map(Rectangle::highX).map(CoverFields::rounded).orElse(null),
                cover.over().map(Rectangle::highY).map(CoverFields::rounded).orElse(null),
                null,
                null,
                null,
                1,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                "",
                at,
                null,
                null);
    }

    /** The form of a cover as it is; what passes of each quantity comes from one source, as the form asks for it. */
    static CoverForm of(Cover cover, LocalDateTime at) {
        CoverForm place = inPlaceOf(cover, kind(cover.material()), at);
        Optional<CoverMaterial.Weave> weave =
                cover.material() instanceof CoverMaterial.Weave known ? Optional.of(known) : Optional.empty();
        Map<Quantity, CoverTransmittance> passing =
                cover.material() instanceof CoverMaterial.Passing known ? known.byQuantity() : Map.of();
        return new CoverForm(
                null,
                null,
                place.kind(),
                place.name(),
                place.heightMetres(),
                place.lowXMetres(),
                place.lowYMetres(),
                place.highXMetres(),
                place.highYMetres(),
                weave.map(known -> rounded(known.wireMetres() * MILLIMETRES)).orElse(null),
                weave.map(known -> rounded(known.pitchMetres() * MILLIMETRES)).orElse(null),
                weave.map(known -> known.provenance().mark()).orElse(null),
                cover.layers(),
                percent(passing, Quantity.UV_INDEX),
                mark(passing, Quantity.UV_INDEX),
                percent(passing, Quantity.ILLUMINANCE),
                mark(passing, Quantity.ILLUMINANCE),
                percent(passing, Quantity.UVA),
                mark(passing, Quantity.UVA),
                percent(passing, Quantity.IR_A),
                mark(passing, Quantity.IR_A),
                percent(passing, Quantity.IR_B),
                mark(passing, Quantity.IR_B),
                percent(passing, Quantity.IRRADIANCE),
                mark(passing, Quantity.IRRADIANCE),
                source(weave, passing),
                at,
                null,
                null);
    }

    private static String source(Optional<CoverMaterial.Weave> weave, Map<Quantity, CoverTransmittance> passing) {
        return Stream.concat(
                        weave.map(CoverMaterial.Weave::provenance).stream(),
                        passing.values().stream().map(CoverTransmittance::provenance))
                .map(Provenance::source)
                .distinct()
                .sorted()
                .findFirst()
                .orElse("");
    }

    private static CoverKind kind(CoverMaterial material) {
        if (material.isWeave()) {
            return CoverKind.WEAVE;
        }
        return material.isMesh() ? CoverKind.MESH : CoverKind.SHEET;
    }

    private static @Nullable BigDecimal percent(Map<Quantity, CoverTransmittance> passing, Quantity quantity) {
        return Optional.ofNullable(passing.get(quantity))
                .map(known -> rounded(known.share() * PERCENT))
                .orElse(null);
    }

    private static @Nullable SourceMark mark(Map<Quantity, CoverTransmittance> passing, Quantity quantity) {
        return Optional.ofNullable(passing.get(quantity))
                .map(known -> known.provenance().mark())
                .orElse(null);
    }

    private static BigDecimal rounded(double metres) {
        return BigDecimal.valueOf(metres).setScale(2, RoundingMode.HALF_EVEN);
    }

    void check(Errors errors) {
        checkOrder(form.lowXMetres(), form.highXMetres(), "highXMetres", errors);
        checkOrder(form.lowYMetres(), form.highYMetres(), "highYMetres", errors);
        if (form.kind() == CoverKind.WEAVE) {
            checkWeave(errors);
        } else {
            for (Quantity quantity : RigScene.LIGHT) {
                checkMark(quantity, errors);
            }
        }
    }

    private static void checkOrder(@Nullable BigDecimal low, @Nullable BigDecimal high, String field, Errors errors) {
        if (low != null && high != null && high.compareTo(low) <= 0) {
            errors.rejectValue(field, "rig.over.order");
        }
    }

    private void checkWeave(Errors errors) {
        need("wireMillimetres", form.wireMillimetres(), "rig.weave.needed", errors);
        need("pitchMillimetres", form.pitchMillimetres(), "rig.weave.needed", errors);
        need("weaveMark", form.weaveMark(), "rig.mark.needed", errors);
        if (form.wireMillimetres() != null
                && form.pitchMillimetres() != null
                && form.pitchMillimetres().compareTo(form.wireMillimetres()) <= 0) {
            errors.rejectValue("pitchMillimetres", "rig.pitch.order");
        }
    }

    private void checkMark(Quantity quantity, Errors errors) {
        if (form.percent(quantity) != null) {
            need(field(quantity) + "Mark", form.mark(quantity), "rig.mark.needed", errors);
        }
    }

    private static void need(String field, @Nullable Object typed, String message, Errors errors) {
        if (typed == null && !errors.hasFieldErrors(field)) {
            errors.rejectValue(field, message);
        }
    }

    /** The beginning of the names of a quantity's fields. */
    static String field(Quantity quantity) {
        return FIELDS.getOrDefault(quantity, "irradiance");
    }

    /** Once checked. */
    Cover cover() {
        return new Cover(
                form.name().strip(),
                Optional.ofNullable(form.heightMetres()).map(BigDecimal::doubleValue),
                over(),
                material(),
                Given.of(form.layers()));
    }

    private Optional<Rectangle> over() {
        return Optional.ofNullable(form.lowXMetres())
                .map(low -> new Rectangle(
                        low.doubleValue(),
                        Given.number(form.lowYMetres()),
                        Given.number(form.highXMetres()),
                        Given.number(form.highYMetres())));
    }

    private CoverMaterial material() {
        if (form.kind() == CoverKind.WEAVE) {
            return new CoverMaterial.Weave(
                    Given.number(form.wireMillimetres()) / MILLIMETRES,
                    Given.number(form.pitchMillimetres()) / MILLIMETRES,
                    provenance(Given.of(form.weaveMark())));
        }
        Map<Quantity, CoverTransmittance> known = new EnumMap<>(Quantity.class);
        for (Quantity quantity : RigScene.LIGHT) {
            Optional.ofNullable(form.percent(quantity))
                    .ifPresent(percent -> known.put(quantity, transmittance(percent, quantity)));
        }
        return new CoverMaterial.Passing(Given.of(form.kind()).isMesh(), known);
    }

    private CoverTransmittance transmittance(BigDecimal percent, Quantity quantity) {
        return new CoverTransmittance(percent.doubleValue() / PERCENT, provenance(Given.of(form.mark(quantity))));
    }

    private Provenance provenance(SourceMark mark) {
        return new Provenance(mark, form.source().strip());
    }
}
