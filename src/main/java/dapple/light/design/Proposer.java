package dapple.light.design;

import dapple.light.source.Lamp;
import dapple.light.survey.Crew;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;

/**
 * Looks for rigs that meet every demand. The light of each candidate is computed once for every way to lay the covers; then
 * all mixes are looked at if they are few enough, else many; and what is shown is asked of the engine as a whole.
 */
public final class Proposer {
    /** Shares of the work that are done after the tables, the search and the placing. */
    private static final double TABLES = 0.6;

    private static final double SEARCHED = 0.8;
    private static final double PLACED = 0.95;

    private final ProposalTask task;
    private final Effort effort;
    private final Crew crew;
    private final Cells cells;
    private final Candidates candidates;
    private final List<LightTable> tables = new ArrayList<>();
    private final Progress progress;

    /** The largest size of which every mix that may meet the demands was looked at. */
    private int done = -1;

    private Proposer(ProposalTask task, Effort effort, Crew crew, DoubleConsumer listener) {
        this.task = task;
        this.effort = effort;
        this.crew = crew;
        this.cells = Cells.of(task);
        this.candidates = new Candidates(task);
        for (List<Integer> layering : task.frame().layerings()) {
            tables.add(new LightTable(task, cells, layering, candidates.size() + 1));
        }
        this.progress = new Progress(listener, tables.size() * (candidates.size() + 1));
    }

    /**
     * The rigs.
     *
     * @param crew does the work; what it throws when the work is to be given up comes out here
     * @param progress hears the share that is done, from 0 to 1, from any of the crew's threads
     */
    public static ProposalAnswer propose(ProposalTask task, Crew crew, DoubleConsumer progress) {
        return propose(task, Effort.USUAL, crew, progress);
    }

    static ProposalAnswer propose(ProposalTask task, Effort effort, Crew crew, DoubleConsumer progress) {
        return new Proposer(task, effort, crew, progress).answer();
    }

    private ProposalAnswer answer() {
        fillTables();
        SearchSpace space = new SearchSpace(task, cells, candidates, tables);
        Shortlists found = space.shortlists();
        search(space, found);
        List<Verified> met = verified(space, found.best()).stream()
                .filter(rig -> rig.score().isMet())
                .toList();
        ProposalAnswer answer =
                met.isEmpty() ? none(space, found) : new ProposalAnswer.Found(Choosing.of(met), isExhaustive());
        progress.tell(1);
        return answer;
    }

    private void fillTables() {
        int rows = candidates.size() + 1;
        crew.each(tables.size() * rows, () -> tables, (all, index) -> {
            all.get(index / rows).fill(index % rows, lamps(index % rows));
            progress.step(TABLES);
        });
    }

    private List<Lamp> lamps(int row) {
        return row < candidates.size()
                ? List.of(candidates.get(row).lamp("candidate"))
                : candidates.staying().stream()
                        .map(candidate -> candidate.lamp(candidate.lamp().id()))
                        .toList();
    }

    private void search(SearchSpace space, Shortlists found) {
        done = lookedAt(new TreeSearch(space, effort, true), found);
        progress.tell(SEARCHED);
        if (!isExhaustive()) {
            PlacingSearch.hopeful(space, effort, done + 1).search(crew, found);
        }
        progress.tell(PLACED);
    }

    private boolean isExhaustive() {
        return done == candidates.most();
    }

    /** Looks at all mixes, the small ones first; the largest size of which all were looked at. */
    private int lookedAt(TreeSearch tree, Shortlists found) {
        int size = 0;
        while (size <= candidates.most() && tree.search(size, crew, found)) {
            size++;
        }
        return size - 1;
    }

    private List<Verified> verified(SearchSpace space, List<Mix> mixes) {
        return Verifier.all(space, mixes, crew);
    }

    /** The mixes that the first search left out because they cannot meet the demands are now looked at too. */
    private ProposalAnswer none(SearchSpace space, Shortlists found) {
        int seen = lookedAt(new TreeSearch(space, effort, false), found);
        if (seen < candidates.most()) {
            PlacingSearch.others(space, effort, seen + 1, done + 1).search(crew, found);
        }
        List<Mix> mixes = new ArrayList<>(found.nearest());
        mixes.addAll(found.best());
        List<Verified> near = verified(space, mixes);
        List<Verified> met = near.stream().filter(rig -> rig.score().isMet()).toList();
        if (!met.isEmpty()) {
            return new ProposalAnswer.Found(Choosing.of(met), isExhaustive());
        }
        if (near.isEmpty()) {
            throw new IllegalArgumentException("a receiver lies on a lamp that must hang");
        }
        return new Obstacles(space, near).answer(isExhaustive());
    }
}
