package dapple.approval;

import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import dapple.target.LimitPlace;
import dapple.target.SourcedLimit;
import java.util.Optional;

/** How one cell of a target differs from the version before; at least one of both is there. */
public record CellChange(
        Quantity quantity, LimitPlace place, Optional<SourcedLimit> before, Optional<SourcedLimit> after) {
    /** Whether more ultraviolet is allowed or asked for than before. */
    public boolean raisesUltraviolet() {
        if (quantity != Quantity.UV_INDEX || after.isEmpty()) {
            return false;
        }
        Band now = after.get().band();
        return before.map(SourcedLimit::band)
                .map(old -> now.low() > old.low() || now.high() > old.high())
                .orElse(true);
    }
}
