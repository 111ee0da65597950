package dapple.light.design;

import java.util.List;

/** What is searched: candidates, their light under every way to lay the covers, and what may hang together. */
record SearchSpace(ProposalTask task, Cells cells, Candidates candidates, List<LightTable> tables) {
    Judge judge() {
        return new Judge(task, cells, candidates);
    }

    /** The low limit of a cell of a demand; 0 for none. */
    double low(int cell) {
        return task.demands().get(cells.get(cell).demand()).band().low();
    }

    Shortlists shortlists() {
        return new Shortlists(task.demands().size());
    }

    Score score(Judge judge, int layering, int[] mix, int size) {
        return judge.score(tables.get(layering), mix, size);
    }
}
