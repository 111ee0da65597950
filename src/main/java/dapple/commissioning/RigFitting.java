package dapple.commissioning;

import dapple.commissioning.FittedQuantity.AtPoint;
import dapple.commissioning.FittedQuantity.OfCover;
import dapple.commissioning.FittedQuantity.OfLamp;
import dapple.commissioning.StatedRig.Before;
import dapple.commissioning.StatedRig.Read;
import dapple.lamp.LampFacts;
import dapple.lamp.LampOutput;
import dapple.light.calibration.FittedRig;
import dapple.light.calibration.FittedRig.AtReading;
import dapple.light.calibration.FittedRig.Factor;
import dapple.light.calibration.FittedRig.Part;
import dapple.light.calibration.RigCalibration;
import dapple.light.calibration.RigTask;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.prediction.EnclosureScene;
import dapple.prediction.Outlook;
import dapple.prediction.Predicted;
import dapple.rig.Cover;
import dapple.rig.CoverFacts;
import dapple.rig.CoverMaterial;
import dapple.rig.FittingFacts;
import dapple.site.Formats;
import dapple.site.SourceMark;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Fits a rig to its readings, quantity by quantity. */
@Component
class RigFitting {
    private static final double LEAST_UNCERTAINTY = 0.001;
    private static final double MOST_UNCERTAINTY = 2;
    private static final int LONGEST_SOURCE = 200;

    private final Outlook outlook;
    private final Formats formats;
    private final MessageSource messages;

    RigFitting(Outlook outlook, Formats formats, MessageSource messages) {
        this.outlook = outlook;
        this.formats = formats;
        this.messages = messages;
    }

    /**
     * What a rig is held against.
     *
     * @param before readings before a cover came
     * @param usual ratios that need no notice
     */
    record Question(EnclosureScene scene, List<Taken> taken, Optional<Before> before, Interval usual, ZoneId zone) {
        Question {
            taken = List.copyOf(taken);
        }
    }

    /** Every quantity that was read and is predicted. */
    List<FittedQuantity> of(Question asked) {
        return asked.taken().stream()
                .map(Taken::quantity)
                .distinct()
                .sorted()
                .flatMap(quantity -> of(asked, quantity).stream())
                .toList();
    }

    private Optional<FittedQuantity> of(Question asked, Quantity quantity) {
        StatedRig stated = new StatedRig(asked.scene().rig(), quantity);
        List<Read> read = stated.read(asked.taken());
        List<Read> before = asked.before().map(stated::readBefore).orElse(List.of());
        return stated.taskOf(Stream.concat(read.stream(), before.stream()).toList())
                .map(task -> fitted(asked, stated, read, fit(task)));
    }

    private static Optional<FittedRig> fit(RigTask task) {
        return RigCalibration.of(task) instanceof FittedRig fitted ? Optional.of(fitted) : Optional.empty();
    }

    private FittedQuantity fitted(Question asked, StatedRig stated, List<Read> read, Optional<FittedRig> fitted) {
        Quantity quantity = stated.quantity();
        return new FittedQuantity(
                quantity,
                points(asked, read, fitted),
                fitted.map(rig -> lamps(asked, quantity, rig)).orElse(List.of()),
                fitted.map(rig -> covers(stated, quantity, rig)).orElse(List.of()),
                fitted,
                fitted.map(rig -> rig.doubts(asked.usual())).orElse(List.of()));
    }

    /** In the order of the readings under this rig; those of before come after them and are not shown. */
    private List<AtPoint> points(Question asked, List<Read> read, Optional<FittedRig> fitted) {
        return IntStream.range(0, read.size())
                .mapToObj(row -> point(
                        asked,
                        read.get(row).taken(),
                        fitted.map(rig -> rig.residuals().get(row)),
                        fitted))
                .sorted(Comparator.comparing(
                        (AtPoint point) -> point.taken().point().code()))
                .toList();
    }

    private static boolean isDoubted(FittedRig rig, Taken one, Interval usual) {
        return rig.doubts(usual).stream()
                .anyMatch(doubt -> doubt.part() == Part.POINT
                        && doubt.name().equals(one.point().code()));
    }

    private AtPoint point(Question asked, Taken one, Optional<AtReading> found, Optional<FittedRig> fitted) {
        Optional<Predicted> predicted =
                outlook.withoutZones(asked.scene(), Quantity.UV_INDEX).at(one.point(), one.quantity());
        return new AtPoint(
                one,
                predicted,
                predicted
                        .filter(light -> light.amount() > 0)
                        .map(light -> one.reading().amount() / light.amount()),
                found.map(AtReading::light),
                found.flatMap(AtReading::ratio),
                fitted.filter(rig -> isDoubted(rig, one, asked.usual())).isPresent());
    }

    private List<OfLamp> lamps(Question asked, Quantity quantity, FittedRig rig) {
        return rig.lamps().stream()
                .flatMap(factor -> asked.scene().rig().rig().fittings().stream()
                        .map(FittingFacts::lamp)
                        .filter(lamp -> lamp.tag().equals(factor.name()))
                        .limit(1)
                        .flatMap(lamp -> lamp(asked, quantity, lamp, factor).stream()))
                .toList();
    }

    private Optional<OfLamp> lamp(Question asked, Quantity quantity, LampFacts lamp, Factor factor) {
        return lamp.outputs().stream()
                .filter(output -> output.quantity() == quantity)
                .findFirst()
                .map(stated -> new OfLamp(
                        lamp,
                        stated,
                        measured(asked, stated, factor),
                        new Interval(
                                stated.reading() * factor.interval().low(),
                                stated.reading() * factor.interval().high()),
                        factor));
    }

    private LampOutput measured(Question asked, LampOutput stated, Factor factor) {
        return new LampOutput(
                stated.quantity(),
                stated.reading() * factor.value(),
                stated.distanceMetres(),
                Math.max(LEAST_UNCERTAINTY, Math.min(MOST_UNCERTAINTY, factor.relative())),
                SourceMark.MEASURED,
                source(asked, stated.quantity()));
    }

    /** Where a fitted output comes from. */
    String source(Question asked, Quantity quantity) {
        List<Taken> used =
                asked.taken().stream().filter(one -> one.quantity() == quantity).toList();
        String meters =
                used.stream().map(one -> one.meter().code()).distinct().sorted().collect(Collectors.joining(", "));
        String source = messages.getMessage(
                "commissioning.source",
                new Object[] {
                    asked.scene().enclosure().code(),
                    used.size(),
                    meters,
                    newest(used).map(at -> formats.day(at, asked.zone())).orElse("")
                },
                Locale.UK);
        return source.substring(0, Math.min(LONGEST_SOURCE, source.length()));
    }

    static Optional<Instant> newest(List<Taken> taken) {
        return taken.stream().map(one -> one.reading().takenAt()).max(Comparator.naturalOrder());
    }

    private static List<OfCover> covers(StatedRig stated, Quantity quantity, FittedRig rig) {
        List<CoverFacts> facts = stated.covers();
        return IntStream.range(0, facts.size())
                .mapToObj(
                        index -> cover(facts.get(index), quantity, rig.covers().get(index)))
                .toList();
    }

    private static OfCover cover(CoverFacts facts, Quantity quantity, Factor factor) {
        Optional<Double> share = Optional.of(factor)
                .filter(told -> told.isTold() && !isConfirmed(facts.cover(), told))
                .flatMap(told -> share(facts.cover(), quantity))
                .map(before ->
                        before * Math.pow(factor.value(), 1.0 / facts.cover().layers()))
                .map(found -> Math.min(1, found));
        return new OfCover(facts, factor, share);
    }

    /** A weave says what passes at every angle: it is given up only where the readings contradict it. */
    private static boolean isConfirmed(Cover cover, Factor told) {
        return cover.material().isWeave() && told.interval().contains(1);
    }

    /** What one layer passes as it is stated; of a weave straight through. */
    static Optional<Double> share(Cover cover, Quantity quantity) {
        if (cover.material() instanceof CoverMaterial.Weave weave) {
            double open = 1 - weave.wireMetres() / weave.pitchMetres();
            return Optional.of(open * open);
        }
        return Stream.of((CoverMaterial.Passing) cover.material())
                .flatMap(known -> Stream.ofNullable(known.byQuantity().get(quantity)))
                .map(passing -> passing.share())
                .findFirst();
    }
}
