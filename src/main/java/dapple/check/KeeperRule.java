package dapple.check;

import dapple.enclosure.FrontKind;
import dapple.enclosure.InnerSize;
import dapple.enclosure.PointFacts;
import dapple.lamp.LampClass;
import dapple.lamp.LampFacts;
import dapple.light.dose.KeeperDose;
import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Light;
import dapple.light.field.Receiver;
import dapple.light.geometry.Vec;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.spectrum.KeeperLimit;
import dapple.rig.FittingFacts;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How long a keeper may work before the lamps with the face towards them: at the points that stand for a face, else 0.3 m in
 * front of the middle, at whatever height is worst, with the doors open; where the front is solid, 0.3 m above the rim,
 * wherever is worst. What a front lets through is not known, so nothing is taken off for it.
 */
final class KeeperRule {
    /** How long work before an enclosure is taken to last in a day, min: ours, no source. */
    static final double WORK_MINUTES = 30;

    private static final double SECONDS_PER_HOUR = 3600;
    private static final double BEFORE_METRES = 0.3;
    private static final double STEP_METRES = 0.1;

    private final Case seen;
    private final Map<String, LampFacts> byTag;

    private KeeperRule(Case seen) {
        this.seen = seen;
        this.byTag = seen.scene().rig().rig().fittings().stream()
                .map(FittingFacts::lamp)
                .collect(Collectors.toMap(LampFacts::tag, Function.identity(), (one, other) -> one));
    }

    /** What falls on a face. */
    private record Face(String where, double uvIndex, double actinic, double uva) {
        KeeperLimit limit() {
            return KeeperLimit.of(actinic, uva);
        }

        double minutes() {
            return limit().minutes().orElse(Double.POSITIVE_INFINITY);
        }
    }

    static Checked of(Case seen) {
        return new KeeperRule(seen).checked();
    }

    private Checked checked() {
        if (seen.fittings(LampClass::emitsUltraviolet).isEmpty()) {
            return Checked.holds(TradeCheck.KEEPER, "no-lamp");
        }
        if (!seen.rig().isPredictable()) {
            return notPredicted();
        }
        Field field = Field.of(seen.rig().scene());
        Optional<Face> worst =
                places().flatMap(place -> face(field, place).stream()).min(Comparator.comparingDouble(Face::minutes));
        if (worst.filter(face -> face.minutes() < WORK_MINUTES).isPresent()) {
            return said(Outcome.FAILS, worst.get());
        }
        boolean isWhole = seen.isWhole(Quantity.UV_INDEX);
        return worst.filter(face -> isWhole)
                .map(face -> said(Outcome.HOLDS, face))
                .orElseGet(this::notPredicted);
    }

    private Checked notPredicted() {
        return Checked.unknown(TradeCheck.KEEPER, "not-predicted", seen.missing(Quantity.UV_INDEX));
    }

    private Checked said(Outcome outcome, Face face) {
        String what = face.limit().binding().map(KeeperRule::code).orElse("all-day");
        String minutes = String.format(Locale.ROOT, "%.0f", face.minutes());
        String uvIndexMinutes = String.format(Locale.ROOT, "%.0f", face.minutes() * face.uvIndex());
        List<String> words =
                List.of(face.where(), seen.formats().uvi(face.uvIndex()), minutes, uvIndexMinutes, WORK_MINUTES_SAID);
        Checked found = new Checked(TradeCheck.KEEPER, outcome, outcome + "-" + what + basis(), words, Optional.empty())
                .supposing("check.front." + front());
        return face.limit().minutes().isPresent() ? found.by(face.minutes()) : found;
    }

    private static final String WORK_MINUTES_SAID = String.format(Locale.ROOT, "%.0f", WORK_MINUTES);

    private static String code(KeeperLimit.Binding binding) {
        return binding == KeeperLimit.Binding.ACTINIC ? "actinic" : "uva";
    }

    /** Whether a lamp's spectrum had to be replaced by the rule of thumb. */
    private String basis() {
        boolean isAssumed = seen.rig().scene().lamps().stream()
                .filter(lamp -> lamp.outputs().stream().anyMatch(output -> output.quantity() == Quantity.UV_INDEX))
                .anyMatch(lamp -> hazard(lamp).isEmpty());
        return isAssumed ? "-assumed" : "";
    }

    private Stream<Map.Entry<String, Vec>> places() {
        return hasFaces() ? faces() : usual();
    }

    private boolean hasFaces() {
        return faces().findAny().isPresent();
    }

    private Stream<Map.Entry<String, Vec>> faces() {
        return seen.scene().points().stream()
                .filter(point -> point.role() == PointRole.KEEPER)
                .flatMap(point -> place(point).stream().map(at -> Map.entry(point.code(), at)));
    }

    /** What is supposed of the front. */
    private String front() {
        String kind = kind().map(FrontKind::name).orElse("UNKNOWN");
        return isSolid() && hasFaces() ? kind + ".face" : kind;
    }

    private Optional<FrontKind> kind() {
        return seen.scene().enclosure().front();
    }

    private boolean isSolid() {
        return kind().filter(FrontKind.SOLID::equals).isPresent();
    }

    private static Optional<Vec> place(PointFacts point) {
        return point.position().map(at -> new Vec(at.xMetres(), at.yMetres(), at.zMetres()));
    }

    private Stream<Map.Entry<String, Vec>> usual() {
        return seen.scene().size().stream()
                .flatMap(isSolid() ? this::above : this::before)
                .map(at -> Map.entry(seen.place(at), at));
    }

    private Stream<Vec> before(InnerSize size) {
        return IntStream.rangeClosed(0, (int) Math.ceil(size.heightMetres() / STEP_METRES))
                .mapToObj(step -> new Vec(size.widthMetres() / 2, -BEFORE_METRES, step * STEP_METRES));
    }

    private Stream<Vec> above(InnerSize size) {
        return steps(size.widthMetres())
                .boxed()
                .flatMap(x ->
                        steps(size.depthMetres()).mapToObj(y -> new Vec(x, y, size.heightMetres() + BEFORE_METRES)));
    }

    private static DoubleStream steps(double metres) {
        int count = (int) Math.ceil(metres / STEP_METRES);
        return IntStream.rangeClosed(0, count).mapToDouble(step -> step * metres / count);
    }

    private Optional<Face> face(Field field, Map.Entry<String, Vec> where) {
        if (!seen.rig().isOpen(where.getValue())) {
            return Optional.empty();
        }
        Light light = field.at(new Receiver(where.getValue(), new Facing.Maximum()));
        if (!light.values().values().stream().allMatch(Double::isFinite)
                || !light.values().containsKey(Quantity.UV_INDEX)) {
            return Optional.empty();
        }
        double uva = light.values().getOrDefault(Quantity.UVA, 0.0);
        return Optional.of(
                new Face(where.getKey(), light.values().getOrDefault(Quantity.UV_INDEX, 0.0), actinic(light), uva));
    }

    /** Weighted for skin and eyes, W/m²: each lamp by its own spectrum. */
    private double actinic(Light light) {
        List<Lamp> lamps = seen.rig().scene().lamps();
        return IntStream.range(0, lamps.size())
                .mapToDouble(index -> light.byLamp().get(index).getOrDefault(Quantity.UV_INDEX, 0.0)
                        * hazard(lamps.get(index)).orElse(assumed()))
                .sum();
    }

    private Optional<Double> hazard(Lamp lamp) {
        return Optional.ofNullable(byTag.get(lamp.id()))
                .flatMap(facts -> Optional.ofNullable(
                        seen.known().hazards().get(facts.model().id())));
    }

    private static double assumed() {
        return KeeperLimit.ACTINIC_JOULES_PER_SQUARE_METRE
                / (KeeperDose.UV_INDEX_HOURS_WITHOUT_SPECTRUM * SECONDS_PER_HOUR);
    }
}
