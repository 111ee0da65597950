package dapple.lamp;

import dapple.site.Given;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A lamp model with the spectrum that it has on file.
 *
 * @param stated one of the outputs that it states
 */
record StatedModel(LampModel model, Optional<LampModelOutput> stated, Optional<SpectrumFiled> spectrum) {
    /** Of what the query names; what a model does not have is empty. */
    StatedModel(
            LampModel model,
            @Nullable LampModelOutput stated,
            @Nullable Long spectrumId,
            @Nullable String source,
            @Nullable Instant recordedAt,
            @Nullable Long recordedBy,
            @Nullable SpectrumFigures figures) {
        this(model, Optional.ofNullable(stated), SpectrumFiled.of(spectrumId, source, recordedAt, recordedBy, figures));
    }

    /** Models by id, of rows that stand together. */
    static Map<Long, LampModelFacts> byId(List<StatedModel> rows) {
        return rows.stream().collect(Collectors.groupingBy(row -> row.model().id())).values().stream()
                .map(StatedModel::facts)
                .collect(Collectors.toMap(LampModelFacts::id, Function.identity()));
    }

    private static LampModelFacts facts(List<StatedModel> rows) {
        StatedModel row = rows.get(0);
        List<LampOutput> outputs = rows.stream()
                .flatMap(one -> one.stated().stream())
                .map(LampModelOutput::output)
                .toList();
        return row.model().facts(outputs, row.spectrum());
    }

    /**
     * A lamp.
     *
     * @param own one of the outputs that were measured of it and stand
     */
    record OwnedLamp(Lamp lamp, Optional<OwnOutput> own) {
        /** Of what the query names; what a lamp does not have is empty. */
        OwnedLamp(Lamp lamp, @Nullable OwnOutput own) {
            this(lamp, Optional.ofNullable(own));
        }

        /** Lamps of these models, of rows that stand together. */
        static Stream<LampFacts> facts(List<OwnedLamp> rows, Map<Long, LampModelFacts> models) {
            return rows.stream().collect(Collectors.groupingBy(row -> row.lamp().id())).values().stream()
                    .map(lamp -> facts(
                            lamp, Given.of(models.get(lamp.get(0).lamp().state().modelId()))));
        }

        private static LampFacts facts(List<OwnedLamp> rows, LampModelFacts model) {
            List<OwnOutput> own =
                    rows.stream().flatMap(row -> row.own().stream()).toList();
            return Lamps.facts(rows.get(0).lamp(), model, own);
        }
    }
}
