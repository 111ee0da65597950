package dapple.lamp;

import dapple.site.SourceMark;
import java.util.Optional;

/** What is usual of a kind of lamp: shown to who enters a model, never taken by itself. */
record LampSuggestion(
        LampClass lampClass,
        String kind,
        Optional<Double> lowUvIndexAt30Centimetres,
        Optional<Double> highUvIndexAt30Centimetres,
        Optional<Double> burnInHours,
        Optional<Double> shortestLifeHours,
        Optional<Double> longestLifeHours,
        Optional<Double> smallestDistanceCentimetres,
        String hazards,
        SourceMark mark,
        String note) {}
