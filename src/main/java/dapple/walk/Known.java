package dapple.walk;

import dapple.animal.Housed;
import dapple.door.DoorFacts;
import dapple.expectation.Expectations.Place;
import dapple.light.dose.KeeperDose;
import dapple.light.expectation.Expected;
import dapple.meter.CalibrationInForce;
import dapple.meter.MeterFacts;
import dapple.practice.MeterStanding;
import dapple.prediction.PointLimits;
import dapple.rig.Rig;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/**
 * What is known of a site at the beginning of a walk.
 *
 * @param doors whose codes count, by enclosure
 * @param residents by enclosure
 * @param rigs by enclosure
 * @param limits by enclosure
 * @param hazards of lamps with a spectrum, by lamp model
 * @param lastRead when each place was last read
 * @param calibrations in force, by meter
 * @param standing what was told and checked of the meters
 */
record Known(
        Map<Long, DoorFacts> doors,
        Map<Long, List<Housed>> residents,
        Map<Long, Rig> rigs,
        Map<Long, PointLimits> limits,
        Map<Place, Expected> expected,
        Map<Long, KeeperDose.Hazard> hazards,
        Map<Place, Instant> lastRead,
        List<MeterFacts> meters,
        Map<Long, CalibrationInForce> calibrations,
        MeterStanding standing) {}
