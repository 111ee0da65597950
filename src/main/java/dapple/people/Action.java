package dapple.people;

import static dapple.people.Role.ADMINISTRATOR;
import static dapple.people.Role.INSPECTOR;
import static dapple.people.Role.KEEPER;
import static dapple.people.Role.LIGHTING_LEAD;
import static dapple.people.Role.MAINTENANCE;
import static dapple.people.Role.SUPERVISOR;
import static dapple.people.Role.VET;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/** What can be done, and by whom. {@code docs/roles.md} is this table in words; a test keeps them the same. */
public enum Action {
    /** One's own password and devices. */
    KEEP_OWN_ACCOUNT,
    SEE_TODAY,
    SEE_ENCLOSURES,
    /** Rooms, enclosures and measuring points. */
    ARRANGE_ENCLOSURES,
    /** Builds enclosures alike: arranges them, with lamps and rigs of their own. */
    COPY_ENCLOSURES,
    LOG_READINGS,
    /** Plans rounds and changes them. */
    ARRANGE_ROUNDS,
    SEE_REVIEW,
    /** Says that an alarm has been seen: it goes for everybody. */
    ANSWER_ALARMS,
    SEE_ANIMALS,
    /** Animals and groups: who they are, where they live. */
    KEEP_ANIMALS,
    /** Opens the closed record of an animal again. */
    TAKE_ANIMALS_BACK,
    /** A vet's order: what readings at one animal are judged by. */
    ORDER_LIGHT,
    SEE_STOCK,
    /** Lamp models and lamps. */
    KEEP_LAMPS,
    /** Fittings, cover, furniture and timers of enclosures. */
    CHANGE_RIGS,
    /** Meters and their calibrations. */
    KEEP_METERS,
    /** Says why what the readings tell of a meter is dealt with. */
    SETTLE_METERS,
    /** What species need. */
    SET_TARGETS,
    /** Accepts a finding, gives it to somebody, asks for another reading. */
    DECIDE_FINDINGS,
    /** What was where, read, judged and told at any instant. */
    AUDIT,
    /** What the site settles where no source does. */
    SETTLE,
    MANAGE_PEOPLE,
    /** Takes a collection in from sheets: rooms, animals, lamps, readings. */
    IMPORT,
    /** Takes lists and a year's record out. */
    EXPORT,
    /** Backups of everything, passwords' hashes too, and what is done with them. */
    BACK_UP,
    /** Through a program with a key of one's own. */
    USE_ENGINE;

    private static final Map<Action, Set<Role>> ROLES = new EnumMap<>(Action.class);

    static {
        allow(KEEP_OWN_ACCOUNT, Role.values());
        allow(SEE_TODAY, Role.values());
        allow(SEE_ENCLOSURES, Role.values());
        allow(ARRANGE_ENCLOSURES, SUPERVISOR, LIGHTING_LEAD, ADMINISTRATOR);
        allow(COPY_ENCLOSURES, SUPERVISOR, LIGHTING_LEAD);
        allow(LOG_READINGS, KEEPER, SUPERVISOR, LIGHTING_LEAD, MAINTENANCE);
        allow(ARRANGE_ROUNDS, SUPERVISOR, LIGHTING_LEAD);
        allow(SEE_REVIEW, KEEPER, SUPERVISOR, VET, LIGHTING_LEAD, MAINTENANCE, INSPECTOR);
        allow(ANSWER_ALARMS, KEEPER, SUPERVISOR, VET, LIGHTING_LEAD, MAINTENANCE);
        allow(SEE_ANIMALS, KEEPER, SUPERVISOR, VET, LIGHTING_LEAD, INSPECTOR, ADMINISTRATOR);
        allow(KEEP_ANIMALS, KEEPER, SUPERVISOR, VET, ADMINISTRATOR);
        allow(TAKE_ANIMALS_BACK, SUPERVISOR);
        allow(ORDER_LIGHT, VET);
        allow(SEE_STOCK, Role.values());
        allow(KEEP_LAMPS, SUPERVISOR, LIGHTING_LEAD, MAINTENANCE, ADMINISTRATOR);
        allow(CHANGE_RIGS, SUPERVISOR, LIGHTING_LEAD, MAINTENANCE);
        allow(KEEP_METERS, SUPERVISOR, LIGHTING_LEAD, ADMINISTRATOR);
        allow(SETTLE_METERS, SUPERVISOR, LIGHTING_LEAD);
        allow(SET_TARGETS, SUPERVISOR, VET);
        allow(DECIDE_FINDINGS, SUPERVISOR);
        allow(AUDIT, SUPERVISOR, VET, LIGHTING_LEAD, INSPECTOR, ADMINISTRATOR);
        allow(SETTLE, SUPERVISOR, ADMINISTRATOR);
        allow(MANAGE_PEOPLE, ADMINISTRATOR);
        allow(IMPORT, SUPERVISOR, LIGHTING_LEAD, ADMINISTRATOR);
        allow(EXPORT, SUPERVISOR, VET, LIGHTING_LEAD, INSPECTOR, ADMINISTRATOR);
        allow(BACK_UP, ADMINISTRATOR);
        allow(USE_ENGINE, Role.values());
    }

    private static void allow(Action action, Role... roles) {
        Set<Role> allowed = EnumSet.noneOf(Role.class);
        allowed.addAll(Arrays.asList(roles));
        ROLES.put(action, allowed);
    }

    public boolean isAllowedTo(Role role) {
        return ROLES.getOrDefault(this, Set.of()).contains(role);
    }

    boolean isAllowedToAny(Collection<Role> held) {
        return held.stream().anyMatch(this::isAllowedTo);
    }
}
