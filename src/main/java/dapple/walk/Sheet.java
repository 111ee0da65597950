package dapple.walk;

import dapple.light.dose.KeeperDose;
import dapple.light.quantity.Quantity;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * All that a phone carries on a walk, as its script reads it. Amounts are true ones, in the unit of their quantity: what a
 * meter shows is multiplied by its factor first.
 *
 * @param serverTime when it was written
 * @param plan the round that is walked; empty: one door alone
 */
record Sheet(
        Person person,
        Instant serverTime,
        int warmUpMinutes,
        Optional<Plan> plan,
        List<Stop> stops,
        List<Meter> meters) {
    Sheet {
        stops = List.copyOf(stops);
        meters = List.copyOf(meters);
    }

    /** Whose walk it is: what somebody else has typed is not sent under this name. */
    record Person(long id, String name) {}

    record Plan(long id, String title, LocalDate dueOn) {}

    /**
     * One enclosure.
     *
     * @param door the code on its door, if it has one
     * @param visitKey of the visit that its entries belong to
     */
    record Stop(
            long enclosureId,
            String code,
            String room,
            Optional<String> door,
            List<String> species,
            UUID visitKey,
            Hazard hazard,
            List<Lamp> lamps,
            List<Step> steps) {
        Stop {
            species = List.copyOf(species);
            lamps = List.copyOf(lamps);
            steps = List.copyOf(steps);
        }
    }

    /** What a minute at a UV index of 1 does to people under the worst lamp of an enclosure, J/m². */
    record Hazard(double actinicPerUviMinute, double uvaPerUviMinute, boolean assumed) {
        static Hazard of(KeeperDose.Hazard hazard) {
            return new Hazard(hazard.actinicPerUvIndexMinute(), hazard.uvaPerUvIndexMinute(), hazard.isAssumed());
        }
    }

    /**
     * A lamp whose timer is known.
     *
     * @param gives what it gives, as far as is usual of its class
     * @param lit when it burns around the day of the walk
     */
    record Lamp(String tag, List<Quantity> gives, List<Lit> lit) {
        Lamp {
            gives = List.copyOf(gives);
            lit = List.copyOf(lit);
        }
    }

    record Lit(Instant from, Instant to) {}

    /**
     * One quantity at one point.
     *
     * @param title the point and its role, in words
     * @param where its place and how the sensor is held, in words
     * @param quantityWord empty of the UV index, which goes without saying
     * @param otherwise how else the sensor might be held
     * @param skippable whether it may be left for another time
     * @param lastRead in words, without the amount
     * @param expected the likely amounts; empty: nothing is known
     * @param ceiling what no amount may reach; empty: there is none
     * @param repeats whether three readings one after the other are asked for
     */
    record Step(
            long pointId,
            String code,
            String title,
            String where,
            Quantity quantity,
            String quantityWord,
            String unit,
            boolean mayBeNegative,
            double lowest,
            double highest,
            List<Choice> otherwise,
            boolean skippable,
            String lastRead,
            boolean done,
            Optional<Range> expected,
            Optional<Double> ceiling,
            boolean repeats) {
        Step {
            otherwise = List.copyOf(otherwise);
        }
    }

    record Choice(String value, String word) {}

    record Range(double low, double high) {}

    /**
     * A meter in use.
     *
     * @param resolution step of its display
     * @param factors true over displayed, by ranges of the display that rise
     * @param range what it can show; empty: not known
     * @param notices what speaks against it, in words
     */
    record Meter(
            long id,
            String name,
            Quantity quantity,
            double resolution,
            List<Factor> factors,
            Optional<Range> range,
            List<String> notices) {
        Meter {
            factors = List.copyOf(factors);
            notices = List.copyOf(notices);
        }
    }

    /**
     * Of one range of a display.
     *
     * @param upTo its end; empty: it has none
     */
    record Factor(Optional<Double> upTo, double factor) {}
}
