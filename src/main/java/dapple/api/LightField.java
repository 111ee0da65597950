package dapple.api;

import dapple.api.Answer.Amounts;
import dapple.api.Answer.At;
import dapple.api.Answer.OnGrid;
import dapple.api.Asked.Grid;
import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Light;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.field.SourcePlaces;
import dapple.light.geometry.Vec;
import dapple.light.quantity.Interval;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import dapple.light.survey.FoundZones;
import dapple.light.survey.ZoneSurvey;
import dapple.light.uncertainty.Intervals;
import dapple.light.uncertainty.SceneUncertainty;
import dapple.light.zone.Lattice;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Computes what one document asks for. */
final class LightField {
    private static final Interval DARK = new Interval(0, 0);

    private final Asked asked;
    private final Engine.Run run;
    private final List<Quantity> quantities;
    private final List<Lamp> lamps;

    private LightField(Asked asked, Engine.Run run) {
        this.asked = asked;
        this.run = run;
        this.lamps = asked.scene().lamps();
        Set<Quantity> emitted = EnumSet.noneOf(Quantity.class);
        lamps.forEach(lamp -> lamp.outputs().stream().map(Output::quantity).forEach(emitted::add));
        this.quantities = List.copyOf(emitted);
    }

    static Answer of(Asked asked, Engine.Run run) {
        LightField light = new LightField(asked, run);
        Field field = light.field();
        List<At> lights = light.receivers(field);
        Optional<OnGrid> grid = asked.grid().map(places -> light.grid(field, places));
        Optional<FoundZones> zones = grid.flatMap(light::zones);
        List<String> warnings = light.warnings(lights, grid);
        zones.ifPresent(found -> found.doubts().forEach(doubt -> warnings.add(warning(doubt))));
        return new Answer(light.quantities, light.lamps, asked.receivers(), lights, grid, zones, warnings);
    }

    private Optional<FoundZones> zones(OnGrid grid) {
        return asked.zones().map(needs -> {
            Lattice lattice = grid.asked().lattice();
            if (!(grid.asked().facing() instanceof Facing.Maximum)) {
                return ZoneSurvey.of(asked.scene(), needs, lattice, run);
            }
            Amounts amounts = grid.values().get(quantities.indexOf(needs.quantity()));
            return ZoneSurvey.of(asked.scene(), needs, new ZoneSurvey.Known(lattice, amounts::at), run);
        });
    }

    /** Fits the lamps to their readings, which may take its time too. */
    private Field field() {
        return run.alone(this::fitted);
    }

    private Field fitted() {
        try {
            return Field.of(asked.scene());
        } catch (IllegalArgumentException cause) {
            throw unfitted().orElseThrow(() -> cause);
        }
    }

    /** The lamp whose readings cannot be fitted. */
    private Optional<RefusedException> unfitted() {
        Scene scene = asked.scene();
        for (int index = 0; index < lamps.size(); index++) {
            try {
                Field.of(new Scene(scene.accuracy(), List.of(lamps.get(index)), List.of(), List.of()));
            } catch (IllegalArgumentException cause) {
                return Optional.of(Problem.fault(
                                "/lamps/" + index + "/output",
                                "The lamp gives no light at the places where its output was read.")
                        .refused());
            }
        }
        return Optional.empty();
    }

    private List<At> receivers(Field field) {
        At[] lights = new At[asked.receivers().size()];
        Optional<Intervals> intervals = run.alone(
                () -> asked.uncertainty().filter(unused -> lights.length > 0).map(this::intervals));
        run.each(
                lights.length,
                () -> new Tools(field.another(), intervals.map(Intervals::another)),
                (own, index) -> lights[index] = at(own.field(), own.intervals(), index));
        return List.of(lights);
    }

    private Intervals intervals(SceneUncertainty uncertainty) {
        return Intervals.of(asked.scene(), uncertainty);
    }

    /** What one thread keeps to itself. */
    private record Tools(Field field, Optional<Intervals> intervals) {}

    private At at(Field field, Optional<Intervals> intervals, int index) {
        Receiver receiver = asked.receivers().get(index).receiver();
        Light light = field.at(receiver);
        if (!isFinite(light)) {
            throw Problem.fault(
                            "/receivers/" + index + "/at",
                            "No finite amount of light can be given here: the place lies on a source,"
                                    + " or a lamp is too strong.")
                    .refused();
        }
        List<Amounts> byLamp = light.byLamp().stream().map(this::amounts).toList();
        return new At(
                amounts(light.values()),
                byLamp,
                light.error(),
                facing(light),
                intervals.map(of -> inOrder(of.at(field, receiver, light))).orElse(List.of()));
    }

    private List<Interval> inOrder(Map<Quantity, Interval> named) {
        return quantities.stream()
                .map(quantity -> named.getOrDefault(quantity, DARK))
                .toList();
    }

    /** Amounts in the order of the quantities, NaN for those that are not named. */
    private Amounts amounts(Map<Quantity, Double> named) {
        Amounts amounts = new Amounts(quantities.size());
        for (int row = 0; row < quantities.size(); row++) {
            amounts.set(row, named.getOrDefault(quantities.get(row), Double.NaN));
        }
        return amounts;
    }

    private List<Vec> facing(Light light) {
        return light.facing()
                .map(directions -> quantities.stream()
                        .map(quantity -> directions.getOrDefault(quantity, Vec.UP))
                        .toList())
                .orElse(List.of());
    }

    private static boolean isFinite(Light light) {
        return Double.isFinite(light.error())
                && light.values().values().stream().allMatch(Double::isFinite)
                && light.byLamp().stream()
                        .allMatch(amounts -> amounts.values().stream().allMatch(Double::isFinite));
    }

    private OnGrid grid(Field field, Grid grid) {
        List<Amounts> values =
                quantities.stream().map(quantity -> new Amounts(grid.size())).toList();
        double[] errors = new double[grid.size()];
        run.each(grid.size(), field::another, (own, index) -> errors[index] = at(own, grid, index, values));
        return new OnGrid(grid, values, Arrays.stream(errors).max().orElse(0));
    }

    /** Stores the light at a place of the grid; gives back its error. */
    private double at(Field field, Grid grid, int index, List<Amounts> values) {
        Vec place = grid.place(index);
        double[] amounts = new double[values.size()];
        Arrays.fill(amounts, Double.NaN);
        double error = isOpen(place, grid.facing()) ? field.amounts(place, grid.facing(), amounts) : 0;
        boolean isFinite = Double.isFinite(error) && Arrays.stream(amounts).allMatch(Double::isFinite);
        for (int row = 0; row < values.size(); row++) {
            values.get(row).set(index, isFinite ? amounts[row] : Double.NaN);
        }
        return isFinite ? error : 0;
    }

    private boolean isOpen(Vec place, Facing facing) {
        boolean hasDirection = !(facing instanceof Facing.TowardsLamp towards)
                || lamps.stream()
                        .filter(lamp -> lamp.id().equals(towards.id()))
                        .noneMatch(lamp -> lamp.centre().minus(place).length() == 0);
        return hasDirection && SourcePlaces.isOpen(asked.scene(), place);
    }

    private static String warning(FoundZones.Doubt doubt) {
        return switch (doubt) {
            case LESS_ACCURATE -> "Zones: the accuracy asked for was not reached everywhere.";
            case PATCH_OUT_OF_REACH -> "Zones: no reachable place of the grid lies beside the patch.";
        };
    }

    private List<String> warnings(List<At> lights, Optional<OnGrid> grid) {
        double accuracy = asked.scene().accuracy();
        List<String> warnings = new ArrayList<>();
        for (int index = 0; index < lights.size(); index++) {
            if (lights.get(index).error() > accuracy) {
                warnings.add(String.format(
                        Locale.ROOT,
                        "Receiver %s: the accuracy asked for was not reached.",
                        asked.receivers().get(index).id()));
            }
        }
        grid.filter(places -> places.error() > accuracy)
                .ifPresent(places -> warnings.add("The grid: the accuracy asked for was not reached everywhere."));
        return warnings;
    }
}
