package dapple.exposure;

import dapple.meter.MeterFacts;
import dapple.reading.JudgedReading;
import dapple.reading.ReadingView;
import dapple.reading.Readings;
import dapple.site.Given;
import dapple.target.Target;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.PageImpl;
import org.springframework.data.domain.PageRequest;
import org.springframework.data.domain.Pageable;

/** An animal's light with what its readings are shown with. */
record ShownLight(Exposure exposure, Map<Long, MeterFacts> meters, List<Target> versions) {
    /** The readings of the period, newest first. */
    Page<ReadingView> readings(int page) {
        List<JudgedReading> all = exposure.readings();
        Pageable asked = PageRequest.of(page, Readings.PAGE_SIZE);
        Map<Long, Target> byId = versions.stream().collect(Collectors.toMap(Target::id, Function.identity()));
        List<ReadingView> views = all.stream()
                .skip(asked.getOffset())
                .limit(asked.getPageSize())
                .map(reading -> view(reading, byId))
                .toList();
        return new PageImpl<>(views, asked, all.size());
    }

    private ReadingView view(JudgedReading reading, Map<Long, Target> byId) {
        return new ReadingView(
                reading,
                exposure.lived().point(reading),
                Given.of(meters.get(reading.meterId())),
                reading.targetVersionId().map(byId::get),
                Optional.empty(),
                exposure.lived().orders().stream()
                        .filter(order ->
                                reading.orderId().filter(id -> id == order.id()).isPresent())
                        .findFirst());
    }
}
