package dapple.lamp;

import dapple.light.quantity.Quantity;
import dapple.site.Given;
import dapple.site.Line;
import dapple.site.SourceMark;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a lamp model gives of a quantity, with the version that the form was made from. */
record ModelOutputForm(
        @NotNull @Nullable Long version,

        @NotNull @DecimalMin("0.000001") @DecimalMax("999999999") @Nullable
        BigDecimal reading,

        @NotNull @DecimalMin("0.01") @DecimalMax("20") @Nullable
        BigDecimal distanceMetres,

        @NotNull @DecimalMin("0.1") @DecimalMax("200") @Nullable
        BigDecimal uncertaintyPercent,

        @NotNull @Nullable SourceMark mark,
        @Line @Size(max = 200) String source) {

    /** What people may say themselves. */
    static final List<SourceMark> MARKS = Arrays.stream(SourceMark.values())
            .filter(mark -> mark != SourceMark.COMPUTED)
            .toList();

    static ModelOutputForm of(StatedOutput stated) {
        return stated.output()
                .map(output -> new ModelOutputForm(
                        stated.version(),
                        BigDecimal.valueOf(output.reading()),
                        BigDecimal.valueOf(output.distanceMetres()),
                        Percent.of(output.relativeUncertainty()),
                        output.mark(),
                        output.source()))
                .orElseGet(() -> new ModelOutputForm(stated.version(), null, null, null, SourceMark.FROM_MEMORY, ""));
    }

    ModelOutputForm onVersion(long newVersion) {
        return new ModelOutputForm(newVersion, reading, distanceMetres, uncertaintyPercent, mark, source);
    }

    long versionSeen() {
        return Given.of(version);
    }

    LampOutput output(Quantity quantity) {
        return new LampOutput(
                quantity,
                Given.number(reading),
                Given.number(distanceMetres),
                Percent.share(uncertaintyPercent),
                Given.of(mark),
                source.strip());
    }
}
