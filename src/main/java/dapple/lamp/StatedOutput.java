package dapple.lamp;

import java.util.Optional;

/**
 * What is stated of one quantity of a lamp model.
 *
 * @param version for forms: 0 where nothing is stated
 */
record StatedOutput(long version, Optional<LampOutput> output) {
    static StatedOutput of(Optional<LampModelOutput> row) {
        return new StatedOutput(row.map(stored -> stored.version() + 1).orElse(0L), row.map(LampModelOutput::output));
    }
}
