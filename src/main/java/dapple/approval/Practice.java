package dapple.approval;

import dapple.light.quantity.Quantity;
import dapple.site.DecimalText;
import dapple.target.LimitPlace;
import dapple.target.SourcedLimit;
import java.util.Optional;

/** What practice derives from the basking range that is typed; none where nothing readable is typed. */
public record Practice(Optional<String> shade, Optional<String> ceiling) {
    static Practice of(TargetForm form) {
        CellName basking = new CellName(Quantity.UV_INDEX, LimitPlace.BASKING);
        return new Practice(
                typed(form, basking.low()).map(low -> high(CommonPractice.shade(low))),
                typed(form, basking.high()).map(high -> high(CommonPractice.ceiling(high))));
    }

    private static Optional<Double> typed(TargetForm form, String name) {
        return DecimalText.read(form.cell(name))
                .filter(number -> number.signum() >= 0)
                .map(Number::doubleValue);
    }

    private static String high(SourcedLimit limit) {
        return CellName.plain(limit.band().high());
    }
}
