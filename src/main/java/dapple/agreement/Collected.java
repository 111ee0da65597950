package dapple.agreement;

import dapple.light.metrology.Compared;
import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is compared at a site.
 *
 * @param from since when readings count
 * @param current each meter since its newest calibration
 */
record Collected(Instant from, Set<MeterKey> current, Map<Quantity, List<Compared>> readings) {}
