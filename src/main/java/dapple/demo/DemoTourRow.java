package dapple.demo;

import dapple.people.Role;
import dapple.site.ReferenceTable;
import java.util.List;

/** A stop of the tour as its table has it: what somebody of a role is shown, and of which thing of the demo. */
record DemoTourRow(Role role, String stop, Thing thing, String name, String path) {
    /** Of what a path has the id. */
    enum Thing {
        NONE,
        ENCLOSURE,
        ANIMAL,
        FINDING
    }

    static List<DemoTourRow> read() {
        return ReferenceTable.rows(
                "demo/tour.csv",
                row -> new DemoTourRow(
                        Role.valueOf(row.getField("role")),
                        row.getField("stop"),
                        Thing.valueOf(row.getField("thing")),
                        row.getField("name"),
                        row.getField("path")));
    }

    DemoStop at(long id) {
        return new DemoStop(stop, path.replace("{id}", Long.toString(id)));
    }
}
