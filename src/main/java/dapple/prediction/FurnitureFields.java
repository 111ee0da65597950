package dapple.prediction;

import dapple.light.geometry.Vec;
import dapple.rig.Furniture;
import dapple.rig.FurnitureKind;
import dapple.rig.FurnitureShape;
import dapple.rig.FurnitureShape.Block;
import dapple.rig.FurnitureShape.Branch;
import dapple.rig.FurnitureShape.Post;
import dapple.site.Given;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/** What is between the fields of a form for furniture and a piece of furniture. */
record FurnitureFields(FurnitureForm form) {
    static FurnitureForm empty(FurnitureKind kind, LocalDateTime at) {
        return form(kind, "", Places.NONE, Sizes.NONE, false, at);
    }

    static FurnitureForm of(Furniture item, LocalDateTime at) {
        FurnitureShape shape = item.shape();
        FurnitureKind kind = shape.kind();
        if (shape instanceof Block block) {
            Vec size = block.greatest().minus(block.least());
            Sizes sizes = new Sizes(
                    rounded(size.x()), rounded(size.y()), rounded(size.z()), null, rounded(block.yawDegrees()));
            return form(
                    kind,
                    item.name(),
                    new Places(Optional.of(block.least()), Optional.empty()),
                    sizes,
                    item.isRestedOn(),
                    at);
        }
        if (shape instanceof Post post) {
            Sizes sizes = new Sizes(null, null, rounded(post.heightMetres()), rounded(post.radiusMetres()), null);
            return form(
                    kind,
                    item.name(),
                    new Places(Optional.of(post.base()), Optional.empty()),
                    sizes,
                    item.isRestedOn(),
                    at);
        }
        Branch branch = (Branch) shape;
        Sizes sizes = new Sizes(null, null, null, rounded(branch.radiusMetres()), null);
        return form(
                kind,
                item.name(),
                new Places(Optional.of(branch.from()), Optional.of(branch.to())),
                sizes,
                item.isRestedOn(),
                at);
    }

    private static FurnitureForm form(
            FurnitureKind kind, String name, Places places, Sizes sizes, boolean isRestedOn, LocalDateTime at) {
        return new FurnitureForm(
                null,
                null,
                kind,
                name,
                places.x(places.begin()),
                places.y(places.begin()),
                places.z(places.begin()),
                places.x(places.end()),
                places.y(places.end()),
                places.z(places.end()),
                sizes.width(),
                sizes.depth(),
                sizes.height(),
                sizes.radius(),
                sizes.yaw(),
                isRestedOn,
                at,
                null,
                null);
    }

    private static BigDecimal rounded(double metres) {
        return BigDecimal.valueOf(metres).setScale(2, RoundingMode.HALF_EVEN);
    }

    void check(Errors errors) {
        if (form.kind() == FurnitureKind.BOX) {
            need(List.of("widthMetres", "depthMetres", "heightMetres"), errors);
        } else if (form.kind() == FurnitureKind.CYLINDER) {
            need(List.of("heightMetres", "radiusMetres"), errors);
        } else if (form.kind() == FurnitureKind.CAPSULE) {
            need(List.of("endXMetres", "endYMetres", "endZMetres", "radiusMetres"), errors);
        }
    }

    private static void need(List<String> fields, Errors errors) {
        for (String field : fields) {
            if (isMissing(errors.getFieldValue(field)) && !errors.hasFieldErrors(field)) {
                errors.rejectValue(field, "rig.size.needed");
            }
        }
    }

    private static boolean isMissing(@Nullable Object typed) {
        return typed == null || typed.toString().isBlank();
    }

    /** Once checked. */
    Furniture furniture() {
        return new Furniture(form.name().strip(), shape(), form.restedOn());
    }

    private FurnitureShape shape() {
        Vec begin = vec(form.xMetres(), form.yMetres(), form.zMetres());
        return switch (Given.of(form.kind())) {
            case BOX ->
                new Block(
                        begin,
                        begin.plus(vec(form.widthMetres(), form.depthMetres(), form.heightMetres())),
                        form.yawDegrees() == null ? 0 : form.yawDegrees().doubleValue());
            case CYLINDER -> new Post(begin, Given.number(form.heightMetres()), Given.number(form.radiusMetres()));
            case CAPSULE ->
                new Branch(
                        begin,
                        vec(form.endXMetres(), form.endYMetres(), form.endZMetres()),
                        Given.number(form.radiusMetres()));
        };
    }

    private static Vec vec(@Nullable BigDecimal x, @Nullable BigDecimal y, @Nullable BigDecimal z) {
        return new Vec(Given.number(x), Given.number(y), Given.number(z));
    }

    private record Sizes(
            @Nullable BigDecimal width,
            @Nullable BigDecimal depth,
            @Nullable BigDecimal height,
            @Nullable BigDecimal radius,
            @Nullable BigDecimal yaw) {
        static final Sizes NONE = new Sizes(null, null, null, null, null);
    }

    private record Places(Optional<Vec> begin, Optional<Vec> end) {
        static final Places NONE = new Places(Optional.empty(), Optional.empty());

        @Nullable
        BigDecimal x(Optional<Vec> place) {
            return place.map(Vec::x).map(FurnitureFields::rounded).orElse(null);
        }

        @Nullable
        BigDecimal y(Optional<Vec> place) {
            return place.map(Vec::y).map(FurnitureFields::rounded).orElse(null);
        }

        @Nullable
        BigDecimal z(Optional<Vec> place) {
            return place.map(Vec::z).map(FurnitureFields::rounded).orElse(null);
        }
    }
}
