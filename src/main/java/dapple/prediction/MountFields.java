package dapple.prediction;

import dapple.enclosure.InnerSize;
import dapple.light.geometry.Vec;
import dapple.rig.Mount;
import dapple.site.Together;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/**
 * Where a lamp is and how it is turned, as forms ask for it.
 *
 * @param lean from straight down, °
 * @param leanTo where it leans to, counter-clockwise from the right seen from above, °
 * @param lengthTo where its length points, likewise, °
 */
record MountFields(
        @Nullable BigDecimal x,
        @Nullable BigDecimal y,
        @Nullable BigDecimal z,
        @Nullable BigDecimal lean,
        @Nullable BigDecimal leanTo,
        @Nullable BigDecimal lengthTo) {
    private static final Together POSITION = new Together(List.of("xMetres", "yMetres", "zMetres"));
    private static final int DECIMALS = 2;
    /** How far outside its enclosure a lamp may be, m (a definition of ours). */
    private static final double REACH_METRES = 3.0;

    static MountFields of(Optional<Mount> mount) {
        return mount.map(MountFields::of).orElseGet(() -> new MountFields(null, null, null, null, null, null));
    }

    private static MountFields of(Mount mount) {
        Vec aim = mount.aim();
        double sideways = Math.hypot(aim.x(), aim.y());
        BigDecimal lean = rounded(Math.toDegrees(Math.atan2(sideways, -aim.z())));
        return new MountFields(
                rounded(mount.centre().x()),
                rounded(mount.centre().y()),
                rounded(mount.centre().z()),
                lean,
                lean.signum() == 0 ? null : azimuth(aim),
                mount.along().map(MountFields::azimuth).orElse(null));
    }

    private static BigDecimal azimuth(Vec way) {
        return rounded(Math.toDegrees(Math.atan2(way.y(), way.x())));
    }

    private static BigDecimal rounded(double number) {
        return BigDecimal.valueOf(number).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    }

    void check(Errors errors) {
        POSITION.check(errors);
        if (lean != null && lean.signum() != 0 && lean.intValue() != 180 && leanTo == null) {
            errors.rejectValue("leanTo", "rig.lean-to.needed");
        }
        boolean isTurned = lean != null || leanTo != null || lengthTo != null;
        if (x == null && y == null && z == null && isTurned) {
            errors.rejectValue("xMetres", "rig.position.needed");
        }
        if (!errors.hasErrors() && lengthTo != null && Mount.isParallel(aim(), level(lengthTo))) {
            errors.rejectValue("lengthTo", "rig.length-to.aim");
        }
    }

    /** A number in centimetres, or with its point at the wrong place, puts a lamp far from its enclosure. */
    void checkIn(InnerSize size, Errors errors) {
        checkNear("xMetres", x, size.widthMetres(), errors);
        checkNear("yMetres", y, size.depthMetres(), errors);
        checkNear("zMetres", z, size.heightMetres(), errors);
    }

    private static void checkNear(String field, @Nullable BigDecimal metres, double wideMetres, Errors errors) {
        if (metres == null || errors.hasFieldErrors(field)) {
            return;
        }
        BigDecimal most = rounded(wideMetres + REACH_METRES);
        BigDecimal least = rounded(-REACH_METRES);
        if (metres.compareTo(least) < 0 || metres.compareTo(most) > 0) {
            errors.rejectValue(
                    field, "rig.position.far", new Object[] {least.toPlainString(), most.toPlainString()}, field);
        }
    }

    /** Once checked. */
    Optional<Mount> mount() {
        if (x == null || y == null || z == null) {
            return Optional.empty();
        }
        Vec centre = new Vec(x.doubleValue(), y.doubleValue(), z.doubleValue());
        return Optional.of(
                new Mount(centre, aim(), Optional.ofNullable(lengthTo).map(MountFields::level)));
    }

    private Vec aim() {
        double angle = lean == null ? 0 : Math.toRadians(lean.doubleValue());
        Vec way = leanTo == null ? new Vec(1, 0, 0) : level(leanTo);
        return angle == 0 ? new Vec(0, 0, -1) : new Vec(0, 0, -Math.cos(angle)).plus(way.times(Math.sin(angle)));
    }

    /** A level direction; exact where it runs along a wall. */
    private static Vec level(BigDecimal degrees) {
        double angle = degrees.doubleValue();
        if (angle % 90 == 0) {
            int quarter = (int) Math.floorMod(Math.round(angle / 90), 4L);
            return List.of(new Vec(1, 0, 0), new Vec(0, 1, 0), new Vec(-1, 0, 0), new Vec(0, -1, 0))
                    .get(quarter);
        }
        return new Vec(Math.cos(Math.toRadians(angle)), Math.sin(Math.toRadians(angle)), 0);
    }
}
