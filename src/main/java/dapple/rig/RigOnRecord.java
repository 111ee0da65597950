package dapple.rig;

import java.util.Map;

/**
 * What hung and stood in an enclosure at an instant, by what is known now and by what was said then.
 *
 * @param rig as it is known now
 * @param saidThen the parts that still held by what had been said then: that they had ended was recorded later
 * @param changes those that began and ended the parts, by their ids
 */
public record RigOnRecord(Rig rig, Rig saidThen, Map<Long, RigChangeFacts> changes) {}
