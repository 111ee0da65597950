package dapple.lamp;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What is said of a lamp when it is entered or changed.
 *
 * @param burnHoursAtEntry how long it had burnt when it was entered, h; empty: not known
 * @param storePlace where it lies when it hangs nowhere; empty: not said
 */
public record NewLamp(
        String tag, long modelId, Optional<Double> burnHoursAtEntry, Optional<LocalDate> boughtOn, String storePlace) {}
