package dapple.review;

import dapple.animal.AnimalFacts;
import dapple.enclosure.PointFacts;
import dapple.reading.ReadingView;
import java.util.List;
import java.util.Map;

/**
 * One enclosure with what its standing rests on.
 *
 * @param points those in use, in walking order
 * @param latest the newest reading of each point that has one, by point
 * @param animals who lives there
 */
public record EnclosureNow(
        Standing standing, List<PointFacts> points, Map<Long, ReadingView> latest, List<AnimalFacts> animals) {}
