package dapple.light.design;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** All ways to choose lamps and to lay the covers, whatever place each lamp gets; a lamp that is kept is a choice apart. */
final class Choices {
    /**
     * Which lamps, and how the covers lie.
     *
     * @param groups for each lamp the candidates that it may be
     */
    record Choice(int layering, List<List<Integer>> groups) {}

    private final Candidates candidates;
    private final List<LightTable> tables;
    private final List<Choice> found = new ArrayList<>();

    private Choices(SearchSpace space) {
        this.candidates = space.candidates();
        this.tables = space.tables();
    }

    /** Those of a size or more. */
    static List<Choice> of(SearchSpace space, int leastSize) {
        Choices choices = new Choices(space);
        for (int layering = 0; layering < choices.tables.size(); layering++) {
            choices.choose(layering, choices.groups(choices.tables.get(layering)), 0, leastSize, List.of());
        }
        return choices.found;
    }

    /** Whether the brightest places of all its lamps together would bring every cell to its low limit. */
    static boolean isHopeful(SearchSpace space, Choice choice) {
        LightTable table = space.tables().get(choice.layering());
        return IntStream.range(0, space.cells().wayStart())
                .allMatch(cell -> space.low(cell)
                        <= most(table, choice, cell, space.candidates().size()));
    }

    private static double most(LightTable table, Choice choice, int cell, int stayingRow) {
        return table.own(stayingRow, cell)
                + choice.groups().stream()
                        .mapToDouble(group -> group.stream()
                                .mapToDouble(row -> table.own(row, cell))
                                .max()
                                .orElse(0))
                        .sum();
    }

    /** The candidates of each lamp; of each so many times as it may hang. */
    private List<List<Integer>> groups(LightTable table) {
        List<List<Integer>> groups = new ArrayList<>();
        List<Integer> usable = IntStream.range(0, candidates.size())
                .filter(table::isKnown)
                .boxed()
                .toList();
        usable.stream()
                .map(this::kind)
                .distinct()
                .forEach(kind -> groups.add(
                        usable.stream().filter(row -> kind(row) == kind).toList()));
        return groups;
    }

    private int kind(int row) {
        Candidate candidate = candidates.get(row);
        return 2 * candidate.option() + (candidate.deed() == Deed.KEPT ? 1 : 0);
    }

    private void choose(int layering, List<List<Integer>> groups, int from, int leastSize, List<List<Integer>> chosen) {
        if (chosen.size() >= leastSize && isWhole(chosen)) {
            found.add(new Choice(layering, chosen));
        }
        for (int next = from; next < groups.size() && chosen.size() < candidates.most(); next++) {
            if (mayHang(groups.get(next), chosen)) {
                List<List<Integer>> more = new ArrayList<>(chosen);
                more.add(groups.get(next));
                choose(layering, groups, next, leastSize, more);
            }
        }
    }

    /** Whether there is one more of a lamp. */
    private boolean mayHang(List<Integer> group, List<List<Integer>> chosen) {
        Candidate lamp = candidates.get(group.get(0));
        long same = chosen.stream()
                .filter(other -> candidates.get(other.get(0)).option() == lamp.option())
                .count();
        return same < lamp.lamp().count();
    }

    private boolean isWhole(List<List<Integer>> chosen) {
        int[] firsts = chosen.stream().mapToInt(group -> group.get(0)).toArray();
        return candidates.isWhole(firsts, firsts.length);
    }
}
