package dapple.lamp;

import dapple.light.quantity.Quantity;
import java.util.List;

/** The quantities of which a lamp model states nothing. */
final class OutputsMissing {
    private OutputsMissing() {}

    static List<Quantity> of(LampModelFacts model) {
        return LampOutput.QUANTITIES.stream()
                .filter(quantity -> model.outputs().stream().noneMatch(output -> output.quantity() == quantity))
                .toList();
    }
}
