package dapple.meter;

import java.util.List;

/**
 * What somebody states of a meter's uncertainty.
 *
 * @param seen id of the budget that stood when the form was made; 0: none
 * @param parts each of another cause; none: the budget is taken back
 */
record NewBudget(long meterId, long seen, List<UncertaintyPart> parts, long personId) {
    static final long NONE = 0;

    NewBudget {
        parts = List.copyOf(parts);
    }
}
