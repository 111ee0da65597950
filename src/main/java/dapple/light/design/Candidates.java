package dapple.light.design;

import dapple.light.field.Receiver;
import dapple.light.geometry.Vec;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/** All lamps as they may hang, and which of them cannot hang together. */
final class Candidates {
    /** Nearer to a receiver no lamp is hung, m. */
    private static final double NEAREST_METRES = 0.01;

    private final ProposalTask task;
    private final List<Candidate> staying = new ArrayList<>();
    private final List<Candidate> all = new ArrayList<>();
    private final List<BitSet> conflicts = new ArrayList<>();
    private final int mustHang;
    private final int changesOfNone;

    Candidates(ProposalTask task) {
        this.task = task;
        for (int option = 0; option < task.options().size(); option++) {
            add(option, task.options().get(option));
        }
        for (Candidate one : all) {
            BitSet of = new BitSet(all.size());
            for (int other = 0; other < all.size(); other++) {
                of.set(other, areInConflict(one, all.get(other)));
            }
            conflicts.add(of);
        }
        this.mustHang = (int) task.options().stream()
                .filter(option -> option.mustHang() && !option.stays())
                .count();
        this.changesOfNone = (int) task.options().stream()
                .filter(option -> option.origin() instanceof Origin.Hung && !option.mustHang())
                .count();
    }

    private void add(int option, LampOption lamp) {
        if (lamp.origin() instanceof Origin.Hung hung) {
            (lamp.stays() ? staying : all).add(Candidate.kept(option, lamp, hung));
        }
        if (!lamp.stays()) {
            for (HangingPlace place : task.places()) {
                lamp.poses().stream()
                        .filter(pose -> !lamp.closedTo().contains(place.id()) && isOpen(pose, place.at()))
                        .forEach(pose -> all.add(Candidate.hung(option, lamp, place, pose)));
            }
        }
    }

    private boolean isOpen(Pose pose, Vec at) {
        return task.frame().room().filter(room -> !pose.isWithin(room, at)).isEmpty()
                && pose.isClearOf(task.frame().solids(), at)
                && staying.stream().allMatch(lamp -> isApart(lamp.centre(), at))
                && task.demands().stream()
                        .flatMap(demand -> demand.receivers().stream())
                        .map(Receiver::place)
                        .allMatch(place -> pose.distance(at, place) > NEAREST_METRES);
    }

    private boolean isApart(Vec one, Vec other) {
        double distance = one.minus(other).length();
        return distance > 0 && distance >= task.apartMetres();
    }

    private boolean areInConflict(Candidate one, Candidate other) {
        boolean isSameLamp = one.option() == other.option() && one.lamp().count() == 1;
        boolean areBothKept = one.deed() == Deed.KEPT && other.deed() == Deed.KEPT;
        return isSameLamp || (!areBothKept && !isApart(one.centre(), other.centre()));
    }

    int size() {
        return all.size();
    }

    Candidate get(int index) {
        return all.get(index);
    }

    List<Candidate> staying() {
        return staying;
    }

    /** The most that may be hung beside those that stay. */
    int most() {
        return task.mostLamps() - staying.size();
    }

    /** Whether one more may hang beside the first of a mix. */
    boolean fits(int[] mix, int size, int more) {
        int same = 0;
        for (int slot = 0; slot < size; slot++) {
            if (conflicts.get(mix[slot]).get(more)) {
                return false;
            }
            same += all.get(mix[slot]).option() == all.get(more).option() ? 1 : 0;
        }
        return same < all.get(more).lamp().count();
    }

    /** The number of mixes of a size from some candidates, as far as there are so many of each lamp. */
    double mixes(int[] rows, int size) {
        double[] ways = new double[size + 1];
        ways[0] = 1;
        for (int option = 0; option < task.options().size(); option++) {
            int of = option;
            double hung = IntStream.of(rows)
                    .filter(row -> all.get(row).option() == of)
                    .count();
            for (int total = size; total > 0; total--) {
                double chosen = 1;
                for (int more = 1;
                        more <= Math.min(total, task.options().get(option).count());
                        more++) {
                    chosen *= Math.max(0, hung - more + 1) / more;
                    ways[total] += chosen * ways[total - more];
                }
            }
        }
        return ways[size];
    }

    /** Whether every lamp that must hang does. */
    boolean isWhole(int[] mix, int size) {
        int found = 0;
        for (int slot = 0; slot < size; slot++) {
            found += all.get(mix[slot]).lamp().mustHang() ? 1 : 0;
        }
        return found == mustHang;
    }

    int changes(int[] mix, int size) {
        int changes = changesOfNone;
        for (int slot = 0; slot < size; slot++) {
            changes += all.get(mix[slot]).changes();
        }
        return changes;
    }

    /** W, NaN if that of any lamp is not known. */
    double watts(int[] mix, int size) {
        double watts = 0;
        for (Candidate lamp : staying) {
            watts += lamp.watts();
        }
        for (int slot = 0; slot < size; slot++) {
            watts += all.get(mix[slot]).watts();
        }
        return watts;
    }
}
