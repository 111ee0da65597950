package dapple.overview;

import dapple.enclosure.PointFacts;
import dapple.prediction.Predicted;

/** The UV index that is predicted at the basking point. */
record AtBasking(PointFacts point, Predicted predicted) {}
