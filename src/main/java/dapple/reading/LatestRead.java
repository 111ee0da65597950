package dapple.reading;

import dapple.meter.MeterFacts;

/** A newest reading with its verdict, and the meter that it was taken with. */
record LatestRead(JudgedReading reading, MeterFacts meter) {}
