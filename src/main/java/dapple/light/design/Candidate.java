package dapple.light.design;

import dapple.light.geometry.Vec;
import dapple.light.source.Lamp;
import java.util.Optional;

/**
 * One lamp hung in one way.
 *
 * @param option index of the option
 * @param place empty: where it hangs now
 */
record Candidate(int option, LampOption lamp, Optional<HangingPlace> place, Pose pose, Vec centre, Deed deed) {
    static Candidate kept(int option, LampOption lamp, Origin.Hung hung) {
        return new Candidate(
                option,
                lamp,
                Optional.empty(),
                new Pose(hung.lamp()),
                hung.lamp().centre(),
                Deed.KEPT);
    }

    static Candidate hung(int option, LampOption lamp, HangingPlace place, Pose pose) {
        Deed deed = lamp.origin() instanceof Origin.Hung
                ? Deed.MOVED
                : lamp.origin() instanceof Origin.AtHand ? Deed.HUNG : Deed.BOUGHT;
        return new Candidate(option, lamp, Optional.of(place), pose, place.at(), deed);
    }

    Lamp lamp(String id) {
        return pose.at(id, centre);
    }

    /** Changes that the lamp adds to those of a rig that takes down all lamps that may go. */
    int changes() {
        return deed.changes() - (lamp.origin() instanceof Origin.Hung && !lamp.mustHang() ? 1 : 0);
    }

    /** W, NaN if not known. */
    double watts() {
        return lamp.powerWatts().orElse(Double.NaN);
    }
}
