package dapple.demo;

import dapple.door.Doors;
import dapple.site.Given;
import java.util.List;
import java.util.Map;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Labels at some doors of every round; the others have none yet. */
@Component
@Profile("demo")
class DemoDoors {
    private static final List<String> LABELLED = List.of(
            "E01", "E02", "E04", "E07", "E09", "E11", "E12", "E16", "E17", "E20", "E22", "E27", "E31", "E36", "E38");

    private final Doors doors;

    DemoDoors(Doors doors) {
        this.doors = doors;
    }

    void label(DemoTeam.Members members, Map<String, Long> enclosures) {
        List<Long> labelled =
                LABELLED.stream().map(code -> Given.of(enclosures.get(code))).toList();
        doors.coded(members.siteId(), labelled, members.supervisor());
    }
}
