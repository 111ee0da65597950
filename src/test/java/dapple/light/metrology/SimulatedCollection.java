package dapple.light.metrology;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A collection that was never there: 20 to 40 enclosures with three points each, read weekly over 18 months by two or
 * three meters, of which one may be knocked or drift. Everything in it is drawn from a seed.
 */
final class SimulatedCollection {
    static final int WEEKS = 78;
    static final Instant FIRST = Instant.parse("2025-01-06T08:00:00Z");
    private static final int POINTS = 3;
    private static final int DOORS_OF_A_ROUND = 10;
    static final double DAYS_PER_YEAR = 365.25;
    private static final double STEP = 0.1;

    /** What is wrong with one of the meters. */
    sealed interface Fault {}

    record None() implements Fault {}

    /** ln. */
    record Knock(double size) implements Fault {}

    /** ln per year. */
    record Drift(double rate) implements Fault {}

    private final SplittableRandom chance;
    private final Fault fault;
    private final List<Double> gains = new ArrayList<>();
    private final List<Compared> readings = new ArrayList<>();
    private final int meters;
    private final int faulty;
    private final double knockedOnDay;
    private final double scatter;

    /** Which meters are on site. */
    enum Meters {
        TWO_OR_THREE,
        TWO_AND_A_REFERENCE_LAMP,
        ONE,
        ONE_AND_A_REFERENCE_LAMP;

        private int number(SplittableRandom chance) {
            int drawn = chance.nextInt(2, 4);
            return switch (this) {
                case TWO_OR_THREE -> drawn;
                case TWO_AND_A_REFERENCE_LAMP -> 2;
                case ONE, ONE_AND_A_REFERENCE_LAMP -> 1;
            };
        }

        private boolean hasReference() {
            return this == TWO_AND_A_REFERENCE_LAMP || this == ONE_AND_A_REFERENCE_LAMP;
        }
    }

    SimulatedCollection(long seed, Fault fault) {
        this(seed, fault, Meters.TWO_OR_THREE);
    }

    SimulatedCollection(long seed, Fault fault, Meters onSite) {
        chance = new SplittableRandom(seed);
        this.fault = fault;
        int enclosures = chance.nextInt(20, 41);
        meters = onSite.number(chance);
        faulty = chance.nextInt(meters);
        knockedOnDay = chance.nextDouble(20 * 7, 70 * 7);
        scatter = chance.nextDouble(0.08, 0.10);
        for (int meter = 0; meter < meters; meter++) {
            gains.add(0.05 * chance.nextGaussian());
        }
        List<House> houses = new ArrayList<>();
        for (int number = 0; number < enclosures; number++) {
            houses.add(new House(number));
        }
        for (int week = 0; week < WEEKS; week++) {
            walk(week, houses);
            if (onSite.hasReference()) {
                readReference(week);
            }
        }
        readings.sort(Comparator.comparing(Compared::at));
    }

    private void walk(int week, List<House> houses) {
        double[] days = chance.doubles(meters)
                .map(unused -> 0.01 * chance.nextGaussian())
                .toArray();
        for (int round = 0; round * DOORS_OF_A_ROUND < houses.size(); round++) {
            int usual = round % meters;
            int meter = chance.nextDouble() < 0.7 ? usual : chance.nextInt(meters);
            boolean isWalked = chance.nextDouble() > 0.04;
            boolean isCompared = week % 13 == 6 && round == 0;
            for (House house :
                    houses.subList(round * DOORS_OF_A_ROUND, Math.min(houses.size(), (round + 1) * DOORS_OF_A_ROUND))) {
                double day = 7.0 * week + round % 5 + 0.02 * (house.number % DOORS_OF_A_ROUND);
                house.live(day);
                if (isWalked && chance.nextDouble() > 0.08) {
                    house.read(meter, day, days);
                }
                for (int other = 0; isCompared && other < meters; other++) {
                    house.read(other, day + 0.01, days);
                }
            }
        }
    }

    /** Two hours a week, three repeats by every meter, in a fixed jig: 4 %. */
    private void readReference(int week) {
        DeclineOfClass decline = new DeclineOfClass(1e-4, 0.8, 104);
        for (int meter = 0; meter < meters; meter++) {
            double day = 7.0 * week + 0.01 * meter;
            double amount =
                    Math.exp(Math.log(4) - 1.5e-4 * 2 * week + lnGain(meter, day) + 0.04 * chance.nextGaussian());
            double shown = STEP * Math.round(amount / STEP);
            readings.add(new Compared(
                    "meter " + meter, "reference", new LampSet("reference", decline), at(day), Math.log(shown), 0.05));
        }
    }

    List<Compared> readings() {
        return readings;
    }

    Fault fault() {
        return fault;
    }

    /** How fast the first meter of two drifts against the second, ln per year. */
    double drift(PairedMeters pair) {
        double rate = fault instanceof Drift drift ? drift.rate() : 0;
        return pair.first().equals(faultyMeter()) ? rate : pair.second().equals(faultyMeter()) ? -rate : 0;
    }

    String faultyMeter() {
        return "meter " + faulty;
    }

    int meters() {
        return meters;
    }

    Instant knockedAt() {
        return at(knockedOnDay);
    }

    static Instant at(double day) {
        return FIRST.plus(Duration.ofSeconds(Math.round(day * 86400)));
    }

    private double lnGain(int meter, double day) {
        double change = meter != faulty
                ? 0
                : fault instanceof Knock knock
                        ? (day >= knockedOnDay ? knock.size() : 0)
                        : fault instanceof Drift drift ? drift.rate() * day / DAYS_PER_YEAR : 0;
        return gains.get(meter) + change;
    }

    /** Lamps with their own pace of ageing, swapped when they have declined, over three points. */
    private final class House {
        private final int number;
        private final double[] lnLevels = new double[POINTS];
        private final double hoursPerDay = chance.nextDouble(9, 13);
        private final DeclineOfClass decline;
        private double lnOutput;
        private double rate;
        private double lampHours;
        private double[] mismatch = new double[meters];
        private double swapOnDay = Double.POSITIVE_INFINITY;
        private int spell;
        private double day;

        House(int number) {
            this.number = number;
            double kind = chance.nextDouble();
            decline = kind < 0.7 ? classOf(1e-4, 0.8) : kind < 0.85 ? classOf(5e-4, 1.0) : classOf(2e-4, 0.9);
            double top = Math.log(chance.nextDouble(2, 7));
            for (int point = 0; point < POINTS; point++) {
                lnLevels[point] = top - 0.6 * point;
            }
            fit();
            double age = chance.nextDouble(0, 2500);
            lampHours = age;
            lnOutput = Math.max(Math.log(0.7), -rate * age);
        }

        private DeclineOfClass classOf(double median, double lnScatter) {
            return new DeclineOfClass(median, lnScatter, hoursPerDay * DAYS_PER_YEAR);
        }

        private void fit() {
            rate = decline.medianPerHour() * Math.exp(decline.lnScatter() * chance.nextGaussian());
            lnOutput = 0.1 * chance.nextGaussian();
            lampHours = 0;
            swapOnDay = Double.POSITIVE_INFINITY;
            mismatch = chance.doubles(meters)
                    .map(unused -> 0.03 * chance.nextGaussian())
                    .toArray();
        }

        void live(double until) {
            double hours = (until - day) * hoursPerDay;
            day = until;
            lampHours += hours;
            lnOutput -= rate * hours + 0.02 * Math.sqrt(hours / 1000) * chance.nextGaussian();
            rate = Math.max(0, rate + 2e-5 * Math.sqrt(hours / 1000) * chance.nextGaussian());
            if (lnOutput < Math.log(0.7) && swapOnDay == Double.POSITIVE_INFINITY) {
                swapOnDay = day + chance.nextDouble(0, 60);
            }
            if (day >= swapOnDay) {
                fit();
                spell += chance.nextDouble() < 0.1 ? 0 : 1;
            }
        }

        void read(int meter, double onDay, double[] days) {
            for (int point = 0; point < POINTS; point++) {
                double burnIn = 0.1 * Math.exp(-lampHours / 30);
                double slip = chance.nextDouble() < 0.02 ? chance.nextDouble(-1.5, 0.7) : 0;
                double amount = Math.exp(lnLevels[point]
                        + lnOutput
                        + burnIn
                        + lnGain(meter, onDay)
                        + mismatch[meter]
                        + days[meter]
                        + scatter * chance.nextGaussian()
                        + slip);
                note(meter, point, onDay, STEP * Math.round(amount / STEP));
            }
        }

        private void note(int meter, int point, double onDay, double shown) {
            if (shown >= 5 * STEP) {
                LampSet lamps = new LampSet(number + "/" + spell, decline);
                double uncertainty = Math.hypot(0.10, STEP / Math.sqrt(12) / shown);
                readings.add(new Compared(
                        "meter " + meter, number + "." + point, lamps, at(onDay), Math.log(shown), uncertainty));
            }
        }
    }
}
