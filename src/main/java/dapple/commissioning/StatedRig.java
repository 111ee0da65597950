package dapple.commissioning;

import dapple.enclosure.PointFacts;
import dapple.light.calibration.RigReading;
import dapple.light.calibration.RigSight;
import dapple.light.calibration.RigTask;
import dapple.light.calibration.SeenLight;
import dapple.light.field.Receiver;
import dapple.light.judging.MeterUncertainty;
import dapple.light.quantity.Quantity;
import dapple.prediction.PredictedLight;
import dapple.rig.Cover;
import dapple.rig.CoverFacts;
import dapple.rig.CoverMaterial;
import dapple.rig.RigScene;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** One quantity of a rig as it is stated: the lamps that give it, its covers, and what of it is seen from points. */
final class StatedRig {
    /** Standard uncertainty of what a measured cover passes, and of any other, relative: assumptions of ours, no source. */
    private static final double MEASURED_COVER = 0.05;

    private static final double OTHER_COVER = 0.10;

    private final RigScene rig;
    private final Quantity quantity;
    private final List<Integer> giving;
    private final RigSight sight;

    StatedRig(RigScene rig, Quantity quantity) {
        this.rig = rig;
        this.quantity = quantity;
        this.giving = IntStream.range(0, rig.scene().lamps().size())
                .filter(lamp -> rig.relativeUncertainties().get(lamp).containsKey(quantity))
                .boxed()
                .toList();
        this.sight = new RigSight(rig.scene(), quantity, PredictedLight.POSITION_METRES);
    }

    Quantity quantity() {
        return quantity;
    }

    List<RigTask.Stated> lamps() {
        List<Map<Quantity, Double>> uncertainties = rig.relativeUncertainties();
        return giving.stream()
                .map(lamp -> new RigTask.Stated(
                        rig.scene().lamps().get(lamp).id(),
                        uncertainties.get(lamp).getOrDefault(quantity, OTHER_COVER)))
                .toList();
    }

    /** Those of which the height is known: without it nothing is predicted. */
    List<CoverFacts> covers() {
        return rig.rig().covers().stream()
                .filter(facts -> facts.cover().heightMetres().isPresent())
                .toList();
    }

    List<RigTask.Stated> statedCovers() {
        return covers().stream()
                .map(CoverFacts::cover)
                .map(cover -> new RigTask.Stated(cover.name(), isMeasured(cover) ? MEASURED_COVER : OTHER_COVER))
                .toList();
    }

    private boolean isMeasured(Cover cover) {
        return cover.material() instanceof CoverMaterial.Passing known
                && Optional.ofNullable(known.byQuantity().get(quantity))
                        .filter(passing -> passing.provenance().isMeasured())
                        .isPresent();
    }

    /** What is seen from a point; empty where nothing is predicted. */
    Optional<SeenLight> seen(PointFacts point) {
        return rig.receiver(point).map(this::seen).filter(light -> Double.isFinite(light.amount()));
    }

    private SeenLight seen(Receiver sensor) {
        SeenLight all = sight.at(sensor);
        return new SeenLight(
                giving.stream().map(all.byLamp()::get).toList(),
                giving.stream().map(all.through()::get).toList(),
                all.relativeOfPlace());
    }

    /** What was taken of this quantity where it is predicted, beside what is seen there. */
    List<Read> read(List<Taken> taken) {
        return taken.stream()
                .filter(one -> one.quantity() == quantity)
                .flatMap(one -> seen(one.point()).map(light -> new Read(one, reading(one, light))).stream())
                .toList();
    }

    /** The same under a rig with the same lamps and some of the covers; nothing if the lamps were others. */
    List<Read> readBefore(Before before) {
        StatedRig other = new StatedRig(before.rig(), quantity);
        List<Long> there = other.covers().stream().map(CoverFacts::id).toList();
        List<Long> here = covers().stream().map(CoverFacts::id).toList();
        if (!other.lamps().equals(lamps()) || !here.containsAll(there)) {
            return List.of();
        }
        List<Integer> places =
                covers().stream().map(cover -> there.indexOf(cover.id())).toList();
        return other.read(before.taken()).stream()
                .map(one -> new Read(
                        one.taken(), reading(one.taken(), through(one.reading().seen(), places))))
                .toList();
    }

    /** The light with its covers in another order; one that was not there let nothing through it. */
    private static SeenLight through(SeenLight seen, List<Integer> places) {
        return new SeenLight(
                seen.byLamp(),
                seen.through().stream()
                        .map(row -> places.stream()
                                .map(place -> place < 0 ? 0.0 : row.get(place))
                                .toList())
                        .toList(),
                seen.relativeOfPlace());
    }

    Optional<RigTask> taskOf(List<Read> read) {
        return task(read.stream().map(Read::reading).toList());
    }

    private Optional<RigTask> task(List<RigReading> readings) {
        return readings.isEmpty() || giving.isEmpty()
                ? Optional.empty()
                : Optional.of(new RigTask(lamps(), statedCovers(), readings));
    }

    private RigReading reading(Taken one, SeenLight light) {
        return RigReading.of(
                one.point().code(),
                one.meter().code(),
                one.meter().uncertainty(),
                one.reading().amount(),
                light);
    }

    /** If every point were read and showed what is predicted. */
    Optional<RigTask> ifAllWereRead(List<PointFacts> points, MeterUncertainty meter) {
        List<RigReading> readings = points.stream()
                .filter(point -> point.quantities().contains(quantity))
                .flatMap(point ->
                        seen(point)
                                .map(light -> RigReading.of(point.code(), "any", meter, light.amount(), light))
                                .stream())
                .toList();
        return task(readings);
    }

    /** What was taken, and the same as a reading of the task. */
    record Read(Taken taken, RigReading reading) {}

    /** The rig before a cover came over it, and what was read then. */
    record Before(RigScene rig, List<Taken> taken) {
        public Before {
            taken = List.copyOf(taken);
        }
    }
}
