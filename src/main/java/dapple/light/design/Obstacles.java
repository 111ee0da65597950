package dapple.light.design;

import dapple.light.design.Binding.Why;
import dapple.light.quantity.Quantity;
import dapple.light.source.Lamp;
import dapple.light.source.Output;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What stands in the way of a rig, told from those that come nearest. */
final class Obstacles {
    private final SearchSpace space;
    private final List<Verified> near;

    /** @param near not empty, none of them meets every demand */
    Obstacles(SearchSpace space, List<Verified> near) {
        this.space = space;
        this.near = near;
    }

    ProposalAnswer answer(boolean isExhaustive) {
        Comparator<Verified> least =
                Comparator.comparingDouble(rig -> rig.score().violation());
        PlannedRig nearest =
                near.stream().min(least.thenComparing(Verified::mix)).get().rig();
        return new ProposalAnswer.NoneFound(nearest, bindings(), isExhaustive);
    }

    private List<Binding> bindings() {
        List<Binding> bindings = new ArrayList<>();
        for (int demand = 0; demand < space.task().demands().size(); demand++) {
            Optional<Why> without = withoutLight(demand);
            if (without.isPresent()) {
                bindings.add(new Binding(
                        space.task().demands().get(demand), without.get(), Optional.empty(), Optional.empty()));
            } else {
                binding(demand).ifPresent(bindings::add);
            }
        }
        bindings.sort(
                Comparator.comparingDouble(binding -> binding.missingFactor().orElse(0.0)));
        return bindings;
    }

    private Optional<Why> withoutLight(int index) {
        Demand demand = space.task().demands().get(index);
        if (!demand.band().hasLow()) {
            return Optional.empty();
        }
        if (lamps().noneMatch(lamp -> gives(lamp, demand.quantity()))) {
            return Optional.of(Why.NO_LAMP_GIVES_IT);
        }
        return arrives(index) ? Optional.empty() : Optional.of(Why.NONE_ARRIVES);
    }

    private Stream<Lamp> lamps() {
        return Stream.concat(
                        space.candidates().staying().stream(),
                        IntStream.range(0, space.candidates().size()).mapToObj(space.candidates()::get))
                .map(candidate -> candidate.pose().lamp());
    }

    private static boolean gives(Lamp lamp, Quantity quantity) {
        return lamp.outputs().stream().anyMatch(output -> output.quantity() == quantity && gives(output));
    }

    private static boolean gives(Output output) {
        return output.factor() > 0 && !(output instanceof Output.Emission emission && emission.amount() == 0);
    }

    /** Whether some light comes to each receiver of a demand from anywhere. */
    private boolean arrives(int demand) {
        return IntStream.range(0, space.cells().count())
                .filter(cell -> space.cells().get(cell).demand() == demand)
                .allMatch(cell -> space.tables().stream()
                        .anyMatch(table -> IntStream.rangeClosed(
                                        0, space.candidates().size())
                                .anyMatch(row -> table.own(row, cell) > 0)));
    }

    private Optional<Binding> binding(int index) {
        return near.stream()
                .filter(rig -> rig.score().onlyUnmet() == index)
                .min(Comparator.comparingDouble((Verified rig) -> rig.score().violation())
                        .thenComparing(Verified::mix))
                .map(rig -> binding(rig.rig(), rig.rig().demands().get(index)));
    }

    private static Binding binding(PlannedRig rig, Fulfilment missed) {
        Why why = missed.amount() < missed.demand().band().low() ? Why.TOO_LITTLE : Why.TOO_MUCH;
        return new Binding(missed.demand(), why, Optional.of(missed.missingFactor()), Optional.of(rig));
    }
}
