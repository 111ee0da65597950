package dapple.comparison;

import dapple.light.quantity.Quantity;
import java.util.List;
import java.util.UUID;

/**
 * Meters to compare.
 *
 * @param key made with the form: the same key begins one comparison, however often it is sent
 * @param meterIds two or more
 * @param pointIds in the order in which they are read
 */
public record NewComparison(
        long siteId, long personId, UUID key, Quantity quantity, List<Long> meterIds, List<Long> pointIds) {
    public NewComparison {
        meterIds = List.copyOf(meterIds);
        pointIds = List.copyOf(pointIds);
    }
}
