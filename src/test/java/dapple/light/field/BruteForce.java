package dapple.light.field;

import dapple.light.geometry.Vec;
import dapple.light.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A second implementation of the field, as plain as can be: sources are cut into small elements until the sum settles,
 * each looked at by itself. Sources, solids and filters are met by formulas of its own; nothing of the engine is used
 * but vectors.
 */
final class BruteForce {
    /** What is summed: the figure asked for, the same without solids, and the vector. */
    static final int SUMS = 5;

    /** The bit of a state that tells of a solid between. */
    private static final int HIDDEN = 1 << 20;

    private static final int FACING_ROUNDS = 200;

    private final List<Obstacle> obstacles;
    private final List<Cover> covers;
    private final Quantity quantity;
    private final Effort effort;

    BruteForce(List<Obstacle> obstacles, List<Cover> covers, Quantity quantity, Effort effort) {
        this.obstacles = obstacles;
        this.covers = covers;
        this.quantity = quantity;
        this.effort = effort;
    }

    /**
     * How far elements are cut.
     *
     * @param tolerance relative, at which the sum of a part counts as settled
     * @param jumpDepth how often a surface is halved at the edge of a shadow or of a filter
     */
    record Effort(double tolerance, int jumpDepth) {
        static final Effort USUAL = new Effort(3e-6, 8);
        static final Effort GREAT = new Effort(1e-7, 12);
    }

    /** What falls on a receiver, and what would without solids. */
    record Sums(double seen, double unshaded) {
        Sums plus(Sums other, double scale) {
            return new Sums(seen + scale * other.seen, unshaded + scale * other.unshaded);
        }
    }

    /**
     * The light of one surface.
     *
     * @param normal of the receiver; from all round if there is none
     */
    Sums at(Surface surface, Vec place, Optional<Vec> normal) {
        double[] rough = total(surface, place, normal, Double.POSITIVE_INFINITY, startDepth(surface));
        double least = Math.max(rough[0], 0.01 * rough[1]);
        double[] fine = total(surface, place, normal, effort.tolerance() * least, jumpDepth(surface));
        return new Sums(fine[0], fine[1]);
    }

    private int startDepth(Surface surface) {
        boolean mayJump = !obstacles.isEmpty()
                || covers.stream().anyMatch(cover -> cover.plate().corners().isPresent());
        return surface.dimensions() == 1 ? 6 : mayJump ? 4 : 3;
    }

    private int jumpDepth(Surface surface) {
        return surface.dimensions() == 1 ? 24 : effort.jumpDepth();
    }

    private double[] total(Surface surface, Vec place, Optional<Vec> normal, double tolerance, int jumpDepth) {
        double[] total = new double[SUMS];
        new Cells(
                        surface.dimensions(),
                        new Elements(surface, place, normal),
                        startDepth(surface),
                        jumpDepth,
                        tolerance,
                        sums -> add(sums, total))
                .integrate();
        return total;
    }

    private static void add(double[] sums, double[] into) {
        for (int index = 0; index < SUMS; index++) {
            into[index] += sums[index];
        }
    }

    /** The light of a surface as many beams. */
    List<Vec> beams(Surface surface, double scale, Vec place) {
        List<Vec> beams = new ArrayList<>();
        new Cells(
                        surface.dimensions(),
                        new Elements(surface, place, Optional.empty()),
                        startDepth(surface) + 1,
                        7,
                        1e-3,
                        sums -> beams.add(new Vec(sums[2], sums[3], sums[4]).times(scale)))
                .integrate();
        beams.removeIf(beam -> beam.length() == 0);
        return beams;
    }

    /** The direction of the plane on which beams give most, from many starts. */
    static Vec brightest(List<Vec> beams) {
        Vec best = Vec.UP;
        double most = -1;
        for (Vec start : starts(beams)) {
            Vec facing = climbed(beams, start);
            double figure = figure(beams, facing);
            if (figure > most) {
                most = figure;
                best = facing;
            }
        }
        return best;
    }

    private static List<Vec> starts(List<Vec> beams) {
        List<Vec> starts = new ArrayList<>();
        for (int x = -1; x <= 1; x++) {
            for (int y = -1; y <= 1; y++) {
                for (int z = -1; z <= 1; z++) {
                    if (x != 0 || y != 0 || z != 0) {
                        starts.add(new Vec(x, y, z).unit());
                    }
                }
            }
        }
        int every = Math.max(1, beams.size() / 40);
        for (int index = 0; index < beams.size(); index += every) {
            starts.add(beams.get(index).unit());
        }
        return starts;
    }

    private static Vec climbed(List<Vec> beams, Vec start) {
        Vec facing = start;
        for (int round = 0; round < FACING_ROUNDS; round++) {
            Vec sum = new Vec(0, 0, 0);
            for (Vec beam : beams) {
                sum = beam.dot(facing) > 0 ? sum.plus(beam) : sum;
            }
            if (sum.length() == 0 || sum.unit().minus(facing).length() < 1e-12) {
                return facing;
            }
            facing = sum.unit();
        }
        return facing;
    }

    private static double figure(List<Vec> beams, Vec facing) {
        return beams.stream().mapToDouble(beam -> Math.max(0, beam.dot(facing))).sum();
    }

    /** The elements of a surface as one receiver sees them. */
    private final class Elements implements Cells.Integrand {
        private final Surface surface;
        private final Vec receiver;
        private final Optional<Vec> normal;

        Elements(Surface surface, Vec receiver, Optional<Vec> normal) {
            this.surface = surface;
            this.receiver = receiver;
            this.normal = normal;
        }

        @Override
        public int add(double u, double v, double weight, double[] sums) {
            Vec place = surface.place(u, v);
            Vec way = place.minus(receiver);
            double distance = way.length();
            Vec direction = way.times(1 / distance);
            double light = weight * surface.intensity(u, v, direction.times(-1)) / (distance * distance);
            int state = state(place, direction);
            if (light > 0) {
                light *= passed(place, direction);
                double figure = light
                        * normal.map(facing -> Math.max(0, direction.dot(facing)))
                                .orElse(1.0);
                sums[1] += figure;
                if (state < HIDDEN) {
                    sums[0] += figure;
                    sums[2] += light * direction.x();
                    sums[3] += light * direction.y();
                    sums[4] += light * direction.z();
                }
            }
            return state;
        }

        @Override
        public int state(double u, double v) {
            Vec place = surface.place(u, v);
            return state(place, place.minus(receiver).unit());
        }

        private int state(Vec place, Vec direction) {
            int state = normal.isPresent() && direction.dot(normal.get()) > 0 ? Cells.BEND : 0;
            state |= surface.isBeyondJump(direction.times(-1)) ? 2 : 0;
            for (int index = 0; index < covers.size(); index++) {
                state |= covers.get(index).plate().isCrossed(receiver, place) ? 4 << index : 0;
            }
            for (int index = 0; index < obstacles.size() && state < HIDDEN; index++) {
                state |= obstacles.get(index).isHit(receiver, place) ? HIDDEN : 0;
            }
            return state;
        }

        private double passed(Vec place, Vec direction) {
            double share = 1;
            for (int index = 0; index < covers.size(); index++) {
                Cover cover = covers.get(index);
                if (cover.plate().isCrossed(receiver, place)) {
                    share *= cover.share(quantity, cover.plate().local(direction));
                }
            }
            return share;
        }
    }
}
