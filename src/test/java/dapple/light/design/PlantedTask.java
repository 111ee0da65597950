package dapple.light.design;

import static dapple.light.design.SeededEnclosure.between;

import dapple.light.field.Facing;
import dapple.light.field.Field;
import dapple.light.field.Receiver;
import dapple.light.field.Scene;
import dapple.light.geometry.Box;
import dapple.light.geometry.Solid;
import dapple.light.geometry.Vec;
import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * An invented enclosure of 1.2 m by 0.6 m by 0.9 m whose demands some rig is known to meet: bands about what that rig gives,
 * so narrow that few others do.
 *
 * @param planted that rig
 */
record PlantedTask(ProposalTask task, Scene planted) {
    /** High over low limit of a band about the planted amount. */
    private static final double BAND = 1.5;

    /** How far limits lie above the planted amount. */
    private static final double ABOVE = 1.15;

    /** What places and options there are. */
    record Size(int along, int across, int heights, int most) {
        static final Size SMALL = new Size(5, 2, 2, 2);
        static final Size MIDDLE = new Size(6, 2, 3, 3);
        static final Size LARGE = new Size(9, 3, 4, 4);
    }

    static PlantedTask of(long seed, Size size, Facing facing) {
        return new Maker(new Random(seed * 104_729), size, facing).make();
    }

    private static final class Maker {
        private final Random random;
        private final Size size;
        private final Facing facing;
        private final List<LampOption> options;
        private final List<HangingPlace> places;
        private final Frame frame;

        Maker(Random random, Size size, Facing facing) {
            this.random = random;
            this.size = size;
            this.facing = facing;
            List<Solid> solids = List.of(Box.of(new Vec(0.7, 0.1, 0.3), new Vec(1, 0.5, 0.32), 0));
            CoverChoice mesh = new CoverChoice("mesh", SeededEnclosure.mesh(0.55, 1), List.of(1, 2));
            this.frame = new Frame(0.001, List.of(mesh), solids, Optional.empty());
            this.places = places();
            this.options = options();
        }

        private List<HangingPlace> places() {
            List<HangingPlace> all = new ArrayList<>();
            for (int x = 0; x < size.along(); x++) {
                for (int y = 0; y < size.across(); y++) {
                    for (int z = 0; z < size.heights(); z++) {
                        Vec at = new Vec(
                                0.15 + 0.9 * x / (size.along() - 1),
                                0.2 + 0.2 * y / (size.across() - 1),
                                0.6 + 0.25 * z / (size.heights() - 1));
                        all.add(new HangingPlace("place " + all.size(), at));
                    }
                }
            }
            return all;
        }

        private List<LampOption> options() {
            Vec corner = places.get(0).at();
            Lamp hung = SeededEnclosure.tube("hung tube", corner, between(random, 1, 4), 2500);
            return List.of(
                    option(hung, 24, new Origin.Hung(hung, Origin.Freedom.MAY_GO)),
                    option(SeededEnclosure.tube("tube", corner, between(random, 2, 6), 3000), 39, new Origin.AtHand()),
                    option(
                            SeededEnclosure.spot("spot", corner, between(random, 1, 4), 20_000),
                            80,
                            new Origin.AtHand()),
                    option(
                            SeededEnclosure.spot("halide", corner, between(random, 3, 8), 45_000),
                            70,
                            new Origin.ToBuy()));
        }

        private static LampOption option(Lamp lamp, double watts, Origin origin) {
            return new LampOption(lamp.id(), List.of(new Pose(lamp)), Optional.of(watts), origin, 1);
        }

        PlantedTask make() {
            int count = 1 + random.nextInt(size.most());
            List<Integer> order = new ArrayList<>(List.of(0, 1, 2, 3));
            Collections.shuffle(order, random);
            List<Lamp> lamps = IntStream.range(0, count)
                    .mapToObj(slot -> options.get(order.get(slot)).poses().get(0))
                    .map(pose ->
                            pose.at(places.get(random.nextInt(places.size())).at()))
                    .toList();
            Scene planted = frame.scene(lamps, List.of(1 + random.nextInt(2)));
            boolean isFree = lamps.stream().map(Lamp::centre).distinct().count() == count;
            return isFree && light(planted, basking()).getOrDefault(Quantity.UV_INDEX, 0.0) > 0.2
                    ? new PlantedTask(
                            new ProposalTask(
                                    frame, options, places, demands(planted), Optional.empty(), size.most(), 0),
                            planted)
                    : make();
        }

        private Receiver basking() {
            return new Receiver(new Vec(0.35, 0.3, 0.2), facing);
        }

        private List<Demand> demands(Scene planted) {
            Receiver shade = new Receiver(new Vec(1.05, 0.3, 0.02), facing);
            List<Receiver> reachable = IntStream.range(0, 6)
                    .mapToObj(index -> new Receiver(new Vec(0.1 + 0.2 * index, 0.3, 0.4), facing))
                    .toList();
            double most = reachable.stream()
                    .mapToDouble(at -> light(planted, at).getOrDefault(Quantity.UV_INDEX, 0.0))
                    .max()
                    .orElse(0);
            return List.of(
                    Demand.basking("basking UV", Quantity.UV_INDEX, basking(), band(planted, Quantity.UV_INDEX)),
                    Demand.basking(
                            "basking light", Quantity.ILLUMINANCE, basking(), band(planted, Quantity.ILLUMINANCE)),
                    Demand.shade(
                            "shade",
                            Quantity.UV_INDEX,
                            shade,
                            ABOVE * light(planted, shade).getOrDefault(Quantity.UV_INDEX, 0.0)),
                    Demand.ceiling("ceiling", Quantity.UV_INDEX, reachable, ABOVE * most));
        }

        /** A band that holds the planted amount somewhere in its inner nine tenths. */
        private Band band(Scene planted, Quantity quantity) {
            double amount = light(planted, basking()).getOrDefault(quantity, 0.0);
            double low = amount / Math.pow(BAND, between(random, 0.05, 0.95));
            return new Band(low, BAND * low);
        }
    }

    static Map<Quantity, Double> light(Scene scene, Receiver receiver) {
        return Field.of(scene).at(receiver).values();
    }
}
