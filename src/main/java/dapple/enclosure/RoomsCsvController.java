package dapple.enclosure;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.View;

/** The rooms and enclosures of a site as a file, those out of use among them. */
@Controller
@Allowed(Action.SEE_ENCLOSURES)
class RoomsCsvController {
    private final RoomArranging rooms;
    private final Enclosures enclosures;
    private final CsvSheets sheets;

    RoomsCsvController(RoomArranging rooms, Enclosures enclosures, CsvSheets sheets) {
        this.rooms = rooms;
        this.enclosures = enclosures;
        this.sheets = sheets;
    }

    @GetMapping("/rooms.csv")
    View all(@AuthenticationPrincipal SignedIn me) {
        Map<Long, List<PointFacts>> points = enclosures.pointsByEnclosure(me.siteId());
        return sheets.of(
                me.site(),
                "rooms",
                columns(points),
                rooms.all(me.siteId()).stream().flatMap(Row::of).toList());
    }

    private static CsvColumns<Row> columns(Map<Long, List<PointFacts>> points) {
        return CsvColumns.<Row>none()
                .with("room", row -> row.room().name())
                .with("enclosure", of(EnclosureFacts::code))
                .with("width", sized(InnerSize::widthMetres))
                .with("depth", sized(InnerSize::depthMetres))
                .with("height", sized(InnerSize::heightMetres))
                .with(
                        "points",
                        of(enclosure -> points.getOrDefault(enclosure.id(), List.of()).stream()
                                .map(PointFacts::code)
                                .toList()))
                .with("out-of-use-since", row -> row.enclosure().flatMap(EnclosureFacts::retiredAt));
    }

    private static Function<Row, Optional<?>> of(Function<EnclosureFacts, ?> part) {
        return row -> row.enclosure().map(part);
    }

    private static Function<Row, Optional<?>> sized(Function<InnerSize, Double> part) {
        return row -> row.enclosure().flatMap(EnclosureFacts::size).map(part);
    }

    private record Row(RoomFacts room, Optional<EnclosureFacts> enclosure) {
        static Stream<Row> of(RoomRow row) {
            return row.enclosures().isEmpty()
                    ? Stream.of(new Row(row.room(), Optional.empty()))
                    : row.enclosures().stream().map(one -> new Row(row.room(), Optional.of(one)));
        }
    }
}
